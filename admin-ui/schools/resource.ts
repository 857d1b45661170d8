import { SchoolCreate } from './create.tsx';
import { SchoolEdit } from './edit.tsx';
import { SchoolList } from './list.tsx';
import { SchoolShow } from './show.tsx';

export const schools = { name: 'schools', list: SchoolList, create: SchoolCreate, edit: SchoolEdit, show: SchoolShow, recordRepresentation: 'name' };
