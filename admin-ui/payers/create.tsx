import { CreatePage } from '../forms/record-form.tsx';
import { PayerFields } from './fields.tsx';

export const PayerCreate = () => (
  <CreatePage title="Add a payer">
    <PayerFields />
  </CreatePage>
);
