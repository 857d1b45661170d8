import { CreatePage } from '../forms/record-form.tsx';
import { SponsorFields } from './fields.tsx';

export const SponsorCreate = () => (
  <CreatePage title="Add a sponsor">
    <SponsorFields />
  </CreatePage>
);
