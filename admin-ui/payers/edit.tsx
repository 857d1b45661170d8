import { EditPage } from '../forms/record-form.tsx';
import { PayerFields } from './fields.tsx';
import type { Payer } from './types.ts';

export const PayerEdit = () => (
  <EditPage title={(record: Payer) => `Change ${record.name}`}>
    <PayerFields />
  </EditPage>
);
