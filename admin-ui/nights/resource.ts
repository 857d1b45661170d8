import { dayText } from '../format/day.ts';
import { NightEdit } from './edit.tsx';
import { NightList } from './list.tsx';
import { NightShow } from './show.tsx';
import type { Night } from './types.ts';

export const nights = { name: 'nights', list: NightList, edit: NightEdit, show: NightShow, recordRepresentation: (night: Night) => night.title ?? dayText(night.heldOn, 'weekday') };
