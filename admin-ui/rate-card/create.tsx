import { CreatePage } from '../forms/record-form.tsx';
import { RateFields } from './fields.tsx';

export const RateCreate = () => (
  <CreatePage title="Add a price">
    <RateFields />
  </CreatePage>
);
