import { CreatePage } from '../forms/record-form.tsx';
import { SchoolFields } from './fields.tsx';

export const SchoolCreate = () => (
  <CreatePage title="Add a school">
    <SchoolFields />
  </CreatePage>
);
