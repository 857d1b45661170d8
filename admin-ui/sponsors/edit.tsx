import { EditPage } from '../forms/record-form.tsx';
import { SponsorFields } from './fields.tsx';
import type { Sponsor } from './types.ts';

export const SponsorEdit = () => (
  <EditPage title={(record: Sponsor) => `Change ${record.name}`}>
    <SponsorFields />
  </EditPage>
);
