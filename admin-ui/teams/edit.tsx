import { EditPage } from '../forms/record-form.tsx';
import { TeamFields } from './fields.tsx';
import type { Team } from './types.ts';

export const TeamEdit = () => (
  <EditPage title={(team: Team) => `Change ${team.label}`}>
    <TeamFields />
  </EditPage>
);
