export type {
  DueView as Due,
  InvoiceApplicationView as InvoiceApplication,
  InvoiceLineView as InvoiceLine,
  InvoiceView,
  WholeInvoiceView as Invoice,
} from '../../server/billing/invoices/invoice.dto.ts';
