import { Go } from '../fields/go.tsx';
import { Tag, type Mood } from '../fields/tag.tsx';
import { dayText } from '../format/day.ts';
import { instantText } from '../format/instant.ts';
import type { Column } from '../lists/rows.tsx';
import type { ReadDispute } from './types.ts';

const OUTCOMES: Record<NonNullable<ReadDispute['outcome']>, { words: string; mood: Mood }> = {
  stands: { words: 'The read stands', mood: 'plain' }, takenBack: { words: 'Taken back', mood: 'good' }, added: { words: 'Added to the log', mood: 'good' }, makegood: { words: 'To be made good', mood: 'good' },
};

export const DisputeState = ({ dispute }: { dispute: ReadDispute }) => {
  const { words, mood } = dispute.outcome ? OUTCOMES[dispute.outcome] : { words: 'To be answered', mood: 'care' as const };
  return <Tag mood={mood}>{words}</Tag>;
};

export const disputeColumns: Column<ReadDispute>[] = [
  { label: 'Asked', sortBy: 'askedAt', show: (one) => <Go resource="read-disputes" id={one.id}>{instantText(one.askedAt)}</Go> },
  { label: 'Sponsor', sortBy: 'sponsorName', show: (one) => one.sponsorName },
  { label: 'Read', show: (one) => one.readKindName },
  { label: 'Night', sortBy: 'heldOn', show: (one) => dayText(one.heldOn) },
  { label: 'What was asked', show: (one) => one.what },
  { label: 'State', sortBy: 'state', show: (one) => <DisputeState dispute={one} /> },
];
