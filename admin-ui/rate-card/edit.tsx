import { EditPage } from '../forms/record-form.tsx';
import { RateFields } from './fields.tsx';
import type { RateCardLine } from './types.ts';

export const RateEdit = () => (
  <EditPage title={(line: RateCardLine) => `Change the price of ${line.readKindName ?? line.benefitName}`}>
    <RateFields />
  </EditPage>
);
