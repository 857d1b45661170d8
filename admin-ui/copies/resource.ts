import { CopyCreate } from './create.tsx';
import { CopyEdit } from './edit.tsx';
import { CopyList } from './list.tsx';
import { CopyShow } from './show.tsx';

export const copies = { name: 'copies', create: CopyCreate, edit: CopyEdit, list: CopyList, show: CopyShow, recordRepresentation: 'title' };
