import { RateCreate } from './create.tsx';
import { RateEdit } from './edit.tsx';
import { RateList } from './list.tsx';
import { RateShow } from './show.tsx';

export const rateCard = { name: 'rate-card-lines', create: RateCreate, edit: RateEdit, list: RateList, show: RateShow, recordRepresentation: (line: { readKindName?: string | null; benefitName?: string | null }) => line.readKindName ?? line.benefitName ?? 'Price' };
