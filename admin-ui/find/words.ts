import type { DocumentKind, FoundBy } from './types.ts';

export const KIND_WORDS: Record<DocumentKind, string> = { invoice: 'Invoice', creditMemo: 'Credit memo', payment: 'Payment', receipt: 'Receipt', depositSlip: 'Deposit slip' };

export const RESOURCES: Record<DocumentKind, string> = { invoice: 'invoices', creditMemo: 'credit-memos', payment: 'payments', receipt: 'receipts', depositSlip: 'deposit-slips' };

export const FOUND_BY_WORDS: Record<FoundBy, string> = { number: 'Number', amount: 'Amount', reference: 'Check number or reference', name: 'Name' };

export const STATE_WORDS: Record<string, string> = {
  open: 'Open', partlyPaid: 'Partly paid', paid: 'Paid', overdue: 'Overdue', void: 'Void', writtenOff: 'Written off', applied: 'Applied', toApply: 'Not all applied',
  inTheDrawer: 'In the drawer', deposited: 'At the bank', takenOut: 'Taken back', toTheCent: 'To the cent', over: 'Over', short: 'Short',
};
