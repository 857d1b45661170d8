import { CreatePage } from '../forms/record-form.tsx';
import { TeamFields } from './fields.tsx';

export const TeamCreate = () => (
  <CreatePage title="Add a team">
    <TeamFields />
  </CreatePage>
);
