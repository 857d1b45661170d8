import { ReadKindCreate } from './create.tsx';
import { ReadKindEdit } from './edit.tsx';
import { ReadKindList } from './list.tsx';
import { ReadKindShow } from './show.tsx';

export const readKinds = { name: 'read-kinds', create: ReadKindCreate, edit: ReadKindEdit, list: ReadKindList, show: ReadKindShow, recordRepresentation: 'name' };
