import { Tag, type Mood } from '../fields/tag.tsx';
import { GAME_STATUS_WORDS, wordFor } from '../words/choices.ts';

const MOODS: Record<string, Mood> = { played: 'good', underWay: 'care', suspended: 'care', postponed: 'care', cancelled: 'bad' };

export const GameStatus = ({ status }: { status: string }) => <Tag mood={MOODS[status] ?? 'plain'}>{wordFor(GAME_STATUS_WORDS, status)}</Tag>;
