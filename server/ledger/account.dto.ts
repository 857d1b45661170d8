import { OptionalTextField, TextField } from '../platform/http/fields.ts';

export class AccountDto {
  @TextField(1, 80) name: string;
  /** what the district's books call it, such as `01.000.1100` */
  @OptionalTextField(60) outsideCode?: string | null;
}

export interface AccountView {
  /** the code is its id too: an account of the chart is there whether or not the department renamed it */
  id: string;
  code: string;
  name: string;
  /** the name it has in the chart */
  chartName: string;
  outsideCode: string | null;
  /** zero while the department has changed nothing of it */
  version: number;
}
