import { Tag, type Mood } from '../fields/tag.tsx';
import { dayText } from '../format/day.ts';
import type { MakegoodProposalLine } from './types.ts';

type Standing = MakegoodProposalLine['standing'];

const STANDINGS: Record<Standing, { words: string; mood: Mood }> = {
  open: { words: 'Not shown yet', mood: 'care' },
  waitingForAnswer: { words: 'Waiting for an answer', mood: 'care' },
  toBePlaced: { words: 'Agreed, to be placed', mood: 'care' },
  toBeGiven: { words: 'Agreed, planned', mood: 'plain' },
  waitingForContract: { words: 'Agreed, waits for the next contract', mood: 'plain' },
  settled: { words: 'Settled', mood: 'good' },
  declined: { words: 'Declined', mood: 'plain' },
  withdrawn: { words: 'Withdrawn', mood: 'plain' },
};

export const STANDING_CHOICES = Object.entries(STANDINGS).map(([id, { words }]) => ({ id, name: words }));

export const REMEDY_WORDS: Record<MakegoodProposalLine['remedy'], string> = {
  moreReads: 'More reads of the same kind', otherKind: 'Reads of another kind', credit: 'A credit', carryOver: 'Carried into the next contract',
};

export const ProposalStanding = ({ standing }: { standing: Standing }) => <Tag mood={STANDINGS[standing].mood}>{STANDINGS[standing].words}</Tag>;

/** The night of a missed read; where it belongs to none, the day by which it was to be given. */
export const missedDay = (nightId: string | null, missedOn: string): string => (nightId === null ? `By ${dayText(missedOn)}` : dayText(missedOn));
