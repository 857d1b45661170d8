import { OfferCreate } from './create.tsx';
import { OfferEdit } from './edit.tsx';
import { OfferList } from './list.tsx';
import { OfferShow } from './show.tsx';

export const offers = { name: 'offers', list: OfferList, create: OfferCreate, edit: OfferEdit, show: OfferShow, recordRepresentation: 'title' };
