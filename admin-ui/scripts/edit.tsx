import { EditPage } from '../forms/record-form.tsx';
import { ScriptFields, scriptForm } from './fields.tsx';
import type { Script } from './types.ts';

export const ScriptEdit = () => (
  <EditPage title={(record: Script) => `Change ${record.title}`} transform={(values) => ({ ...values, ...scriptForm(values) })}>
    <ScriptFields />
  </EditPage>
);
