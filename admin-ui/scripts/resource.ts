import { ScriptCreate } from './create.tsx';
import { ScriptEdit } from './edit.tsx';
import { ScriptList } from './list.tsx';
import { ScriptShow } from './show.tsx';

export const scripts = { name: 'scripts', create: ScriptCreate, edit: ScriptEdit, list: ScriptList, show: ScriptShow, recordRepresentation: 'title' };
