import { CreatePage } from '../forms/record-form.tsx';
import { VenueFields } from './fields.tsx';

export const VenueCreate = () => (
  <CreatePage title="Add a venue">
    <VenueFields />
  </CreatePage>
);
