import { DepositSlipCreate } from './create.tsx';
import { DepositSlipList } from './list.tsx';
import { DepositSlipShow } from './show.tsx';

export const depositSlips = { name: 'deposit-slips', list: DepositSlipList, create: DepositSlipCreate, show: DepositSlipShow, recordRepresentation: 'number' };
