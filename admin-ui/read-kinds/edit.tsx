import { EditPage } from '../forms/record-form.tsx';
import { ReadKindFields } from './fields.tsx';
import type { ReadKind } from './types.ts';

export const ReadKindEdit = () => (
  <EditPage title={(record: ReadKind) => `Change ${record.name}`}>
    <ReadKindFields />
  </EditPage>
);
