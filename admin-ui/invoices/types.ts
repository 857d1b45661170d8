export type { WaitingWriteOffView as WaitingWriteOff } from '../../server/billing/write-offs/write-off.dto.ts';
export type {
  DueView as Due,
  InvoiceApplicationView as InvoiceApplication,
  InvoiceDiscountView as InvoiceDiscount,
  InvoiceLineView as InvoiceLine,
  InvoiceStoryView as Story,
  InvoiceView,
  WholeInvoiceView as Invoice,
} from '../../server/billing/invoices/invoice.dto.ts';
