import { ReceiptCreate } from './create.tsx';
import { ReceiptList } from './list.tsx';
import { ReceiptShow } from './show.tsx';

export const receipts = { name: 'receipts', list: ReceiptList, create: ReceiptCreate, show: ReceiptShow, recordRepresentation: 'number' };
