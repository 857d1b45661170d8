import { TeamCreate } from './create.tsx';
import { TeamEdit } from './edit.tsx';
import { TeamList } from './list.tsx';
import { TeamShow } from './show.tsx';

export const teams = { name: 'teams', list: TeamList, create: TeamCreate, edit: TeamEdit, show: TeamShow, recordRepresentation: 'label' };
