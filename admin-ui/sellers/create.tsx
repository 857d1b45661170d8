import { CreatePage } from '../forms/record-form.tsx';
import { SellerFields } from './fields.tsx';

export const SellerCreate = () => (
  <CreatePage title="Add a seller of record">
    <SellerFields />
  </CreatePage>
);
