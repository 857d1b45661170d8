import { EditPage } from '../forms/record-form.tsx';
import { RolesInput } from './roles-input.tsx';
import type { Person } from './types.ts';

export const PersonEdit = () => (
  <EditPage title={(person: Person) => `Roles of ${person.name}`}>
    <RolesInput />
  </EditPage>
);
