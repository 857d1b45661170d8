export type {
  LateGroupView as LateGroup,
  LateInvoiceView as LateInvoice,
  OpenItemsView as OpenItems,
  UnappliedView as Unapplied,
} from '../../server/billing/open-items/open-items.dto.ts';
