import { PersonCreate } from './create.tsx';
import { PersonEdit } from './edit.tsx';
import { PersonList } from './list.tsx';
import { PersonShow } from './show.tsx';

export const people = { name: 'people', list: PersonList, create: PersonCreate, edit: PersonEdit, show: PersonShow, recordRepresentation: 'name' };
