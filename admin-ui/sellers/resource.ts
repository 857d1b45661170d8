import { SellerCreate } from './create.tsx';
import { SellerEdit } from './edit.tsx';
import { SellerList } from './list.tsx';
import { SellerShow } from './show.tsx';

export const sellers = { name: 'sellers', create: SellerCreate, edit: SellerEdit, list: SellerList, show: SellerShow, recordRepresentation: 'name' };
