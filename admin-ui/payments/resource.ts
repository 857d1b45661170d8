import { PaymentCreate } from './create.tsx';
import { PaymentList } from './list.tsx';
import { PaymentShow } from './show.tsx';

export const payments = { name: 'payments', list: PaymentList, create: PaymentCreate, show: PaymentShow, recordRepresentation: 'number' };
