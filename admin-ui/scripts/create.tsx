import { CreatePage } from '../forms/record-form.tsx';
import { ScriptFields, scriptForm } from './fields.tsx';

export const ScriptCreate = () => (
  <CreatePage title="Add a script" transform={scriptForm}>
    <ScriptFields />
  </CreatePage>
);
