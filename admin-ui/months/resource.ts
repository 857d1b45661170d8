import { monthText } from '../format/day.ts';
import { MonthList } from './list.tsx';
import { MonthShow } from './show.tsx';

export const months = { name: 'months', list: MonthList, show: MonthShow, recordRepresentation: (month: { id: string }) => monthText(month.id) };
