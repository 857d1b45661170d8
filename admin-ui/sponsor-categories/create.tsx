import { CreatePage } from '../forms/record-form.tsx';
import { CategoryFields } from './fields.tsx';

export const CategoryCreate = () => (
  <CreatePage title="Add a category">
    <CategoryFields />
  </CreatePage>
);
