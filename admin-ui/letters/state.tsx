import { Tag, type Mood } from '../fields/tag.tsx';
import { wordFor } from '../words/choices.ts';
import { LETTER_STATE_WORDS } from './words.ts';

const MOODS: Record<string, Mood> = { sent: 'good', refused: 'bad', bounced: 'bad', givenUp: 'bad' };

export const LetterState = ({ state }: { state: string }) => <Tag mood={MOODS[state] ?? 'plain'}>{wordFor(LETTER_STATE_WORDS, state)}</Tag>;
