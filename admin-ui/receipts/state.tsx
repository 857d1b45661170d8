import { Tag } from '../fields/tag.tsx';
import type { ReceiptState } from './types.ts';

export const RECEIPT_STATE_WORDS: Record<ReceiptState, string> = { inTheDrawer: 'In the drawer', deposited: 'At the bank', takenOut: 'Taken back' };

const MOODS = { inTheDrawer: 'care', deposited: 'good', takenOut: 'bad' } as const;

export const ReceiptStateTag = ({ state }: { state: ReceiptState }) => <Tag mood={MOODS[state]}>{RECEIPT_STATE_WORDS[state]}</Tag>;
