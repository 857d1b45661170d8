import { CreatePage } from '../forms/record-form.tsx';
import { SeasonFields } from './fields.tsx';

export const SeasonCreate = () => (
  <CreatePage title="Add a season">
    <SeasonFields />
  </CreatePage>
);
