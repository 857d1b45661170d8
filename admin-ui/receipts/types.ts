export type { ReceiptPartiesView as ReceiptParties, ReceiptState, ReceiptView as Receipt } from '../../server/billing/receipts/receipt.dto.ts';
