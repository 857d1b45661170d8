import { PayerCreate } from './create.tsx';
import { PayerEdit } from './edit.tsx';
import { PayerList } from './list.tsx';
import { PayerShow } from './show.tsx';

export const payers = { name: 'payers', create: PayerCreate, edit: PayerEdit, list: PayerList, show: PayerShow, recordRepresentation: 'name' };
