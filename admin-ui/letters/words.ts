export const LETTER_KIND_WORDS: Record<string, string> = {
  invoice: 'Invoice', creditMemo: 'Credit memo', reminder: 'Reminder', statement: 'Account statement', receipt: 'Receipt', thankYou: 'Thank-you letter',
};
export const LETTER_STATE_WORDS: Record<string, string> = { queued: 'On its way', sent: 'Sent', refused: 'Refused', bounced: 'Came back', givenUp: 'Not sent' };
export const LETTER_EVENT_WORDS: Record<string, string> = {
  handedOver: 'Handed over', tryFailed: 'A try failed; it is tried again', refused: 'Refused for good', bounced: 'Came back', givenUp: 'Given up',
};
/** The page of what a letter is about. */
export const ABOUT_PAGES: Record<string, { resource: string; label: string }> = {
  invoice: { resource: 'invoices', label: 'Invoice' },
  reminder: { resource: 'invoices', label: 'Invoice' },
  creditMemo: { resource: 'credit-memos', label: 'Credit memo' },
  receipt: { resource: 'receipts', label: 'Receipt' },
  statement: { resource: 'sponsors', label: 'Sponsor' },
  thankYou: { resource: 'contracts', label: 'Contract' },
};

const choices = (words: Record<string, string>) => Object.entries(words).map(([id, name]) => ({ id, name }));
export const LETTER_KINDS = choices(LETTER_KIND_WORDS);
export const LETTER_STATES = choices(LETTER_STATE_WORDS);
