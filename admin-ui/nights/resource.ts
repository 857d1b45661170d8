import { NightEdit } from './edit.tsx';
import { NightList } from './list.tsx';
import { NightShow } from './show.tsx';

export const nights = { name: 'nights', list: NightList, edit: NightEdit, show: NightShow, recordRepresentation: 'title' };
