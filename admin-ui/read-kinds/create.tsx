import { CreatePage } from '../forms/record-form.tsx';
import { ReadKindFields } from './fields.tsx';

export const ReadKindCreate = () => (
  <CreatePage title="Add a read kind">
    <ReadKindFields />
  </CreatePage>
);
