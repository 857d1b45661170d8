import type { CodePartKind, JournalField } from '../../server/domain/billing/journal-layout.ts';

const FIELDS: Record<JournalField, string> = {
  entryNumber: 'Entry number in the batch', entryOn: 'Day it happened', bookedOn: 'Day it is booked', accountCode: 'Our account code', outsideCode: 'Outside code',
  accountName: 'Account name', codeString: 'Code string, whole', codePart: 'Code string, one part', debit: 'Debit', credit: 'Credit', amount: 'Signed amount',
  description: 'What happened', documentNumber: 'Document number', sponsorName: 'Sponsor', contractNumber: 'Contract number', batchNumber: 'Batch number',
  text: 'The same words in every line', blank: 'Left blank',
};

const KINDS: Record<CodePartKind, string> = { constant: 'Always the same', account: 'By account', school: 'By school', team: 'By team' };

const choices = (words: Record<string, string>) => Object.entries(words).map(([id, name]) => ({ id, name }));

export const FIELD_CHOICES = choices(FIELDS);
export const KIND_CHOICES = choices(KINDS);
