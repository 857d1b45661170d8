import { EditPage } from '../forms/record-form.tsx';
import { SellerFields } from './fields.tsx';
import type { Seller } from './types.ts';

export const SellerEdit = () => (
  <EditPage title={(record: Seller) => `Change ${record.name}`}>
    <SellerFields />
  </EditPage>
);
