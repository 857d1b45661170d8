import { Tag, type Mood } from '../fields/tag.tsx';
import { COPY_STATE_WORDS, wordFor } from '../words/choices.ts';

const MOODS: Record<string, Mood> = { approved: 'good', waiting: 'care', stopped: 'bad' };

export const CopyState = ({ state }: { state: string }) => <Tag mood={MOODS[state] ?? 'plain'}>{wordFor(COPY_STATE_WORDS, state)}</Tag>;
