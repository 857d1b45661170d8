import { CreatePage } from '../forms/record-form.tsx';
import { ScriptFields } from './fields.tsx';

export const ScriptCreate = () => (
  <CreatePage title="Add a script">
    <ScriptFields />
  </CreatePage>
);
