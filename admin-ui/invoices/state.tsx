import { Tag, type Mood } from '../fields/tag.tsx';
import { INVOICE_STATE_WORDS, wordFor } from '../words/choices.ts';

const MOODS: Record<string, Mood> = { paid: 'good', partlyPaid: 'care', overdue: 'bad', writtenOff: 'plain' };

export const InvoiceState = ({ state }: { state: string }) => <Tag mood={MOODS[state] ?? 'plain'}>{wordFor(INVOICE_STATE_WORDS, state)}</Tag>;
