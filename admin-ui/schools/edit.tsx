import { EditPage } from '../forms/record-form.tsx';
import { SchoolFields } from './fields.tsx';
import type { School } from './types.ts';

export const SchoolEdit = () => (
  <EditPage title={(school: School) => `Change ${school.name}`}>
    <SchoolFields />
  </EditPage>
);
