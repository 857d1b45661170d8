import { InvoiceList } from './list.tsx';
import { InvoiceShow } from './show.tsx';

export const invoices = { name: 'invoices', list: InvoiceList, show: InvoiceShow, recordRepresentation: 'number' };
