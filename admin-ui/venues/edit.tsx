import { EditPage } from '../forms/record-form.tsx';
import { only } from '../api/changes.ts';
import { VenueFields } from './fields.tsx';
import type { Venue } from './types.ts';

export const VenueEdit = () => (
  <EditPage
    title={(venue: Venue) => `Change ${venue.name}`}
    transform={(venue) => ({ ...venue, floors: ((venue['floors'] ?? []) as Venue['floors']).map((floor) => only(floor, 'id', 'name')) })}
  >
    <VenueFields />
  </EditPage>
);
