import { SeasonCreate } from './create.tsx';
import { SeasonEdit } from './edit.tsx';
import { SeasonList } from './list.tsx';
import { SeasonShow } from './show.tsx';

export const seasons = { name: 'seasons', list: SeasonList, create: SeasonCreate, edit: SeasonEdit, show: SeasonShow, recordRepresentation: 'name' };
