export type { OpenPayerView as OpenPayer } from '../../server/billing/receipts/receipt.dto.ts';
