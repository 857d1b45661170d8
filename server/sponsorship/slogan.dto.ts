import { IdField, TextField } from '../platform/http/fields.ts';
import { ListQuery } from '../platform/http/lists.ts';

export class ChangeSloganDto {
  @TextField(3, 160, { optional: true }) text?: string;
  @TextField(1, 300, { optional: true }) knownFrom?: string;
}

export class SloganDto {
  @IdField() sponsorId: string;
  @TextField(3, 160) text: string;
  @TextField(1, 300) knownFrom: string;
}

export class SloganListQuery extends ListQuery {
  @IdField({ optional: true }) sponsorId?: string;
}

export interface SloganView {
  id: string;
  sponsorId: string;
  sponsorName: string;
  text: string;
  knownFrom: string;
  registeredOn: string;
  version: number;
}
