import { Tag, type Mood } from '../fields/tag.tsx';
import { OFFER_STATE_WORDS, wordFor } from '../words/choices.ts';
import type { Offer } from './types.ts';

const MOODS: Record<Offer['state'], Mood> = { draft: 'plain', open: 'plain', lapsed: 'bad', declined: 'bad', withdrawn: 'plain', accepted: 'good' };

export const OfferStateTag = ({ state }: { state: Offer['state'] }) => <Tag mood={MOODS[state]}>{wordFor(OFFER_STATE_WORDS, state)}</Tag>;
