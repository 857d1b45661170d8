import { EditPage } from '../forms/record-form.tsx';
import { SeasonFields } from './fields.tsx';
import type { Season } from './types.ts';

export const SeasonEdit = () => (
  <EditPage title={(season: Season) => `Change ${season.name}`}>
    <SeasonFields />
  </EditPage>
);
