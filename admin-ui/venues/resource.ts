import { VenueCreate } from './create.tsx';
import { VenueEdit } from './edit.tsx';
import { VenueList } from './list.tsx';
import { VenueShow } from './show.tsx';

export const venues = { name: 'venues', list: VenueList, create: VenueCreate, edit: VenueEdit, show: VenueShow, recordRepresentation: 'name' };
