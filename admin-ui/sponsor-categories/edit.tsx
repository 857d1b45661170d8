import { EditPage } from '../forms/record-form.tsx';
import { CategoryFields } from './fields.tsx';
import type { Category } from './types.ts';

export const CategoryEdit = () => (
  <EditPage title={(record: Category) => `Change ${record.name}`}>
    <CategoryFields />
  </EditPage>
);
