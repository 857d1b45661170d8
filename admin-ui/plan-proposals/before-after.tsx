import { Tag } from '../fields/tag.tsx';
import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { Rows } from '../lists/rows.tsx';
import { Section } from '../show/section.tsx';
import { numberText } from '../words/count.ts';
import { LongRows } from './long-rows.tsx';
import type { GameBeforeAfter, ProposalResult, ReadsMissing, SponsorBeforeAfter } from './types.ts';

const missingOf = (line: SponsorBeforeAfter) => (line.owed > line.after ? <Tag mood="care">{`${numberText(line.owed - line.after)} without a place`}</Tag> : 'None');

export const BySponsor = ({ result }: { result: ProposalResult }) => (
  <Section title="Sponsors before and after">
    <Rows<SponsorBeforeAfter>
      label="Sponsors before and after"
      rows={result.bySponsor}
      keyOf={(line) => line.sponsorId}
      columns={[
        { label: 'Sponsor', show: (line) => line.sponsorName },
        { label: 'Still to give', numeric: true, show: (line) => numberText(line.owed) },
        { label: 'Placed now', numeric: true, show: (line) => numberText(line.before) },
        { label: 'Placed by the plan', numeric: true, show: (line) => numberText(line.after) },
        { label: 'Held for offers', numeric: true, show: (line) => numberText(line.held) },
        { label: 'Missing', show: missingOf },
      ]}
    />
  </Section>
);

export const ByGame = ({ result }: { result: ProposalResult }) => (
  <Section title="Games before and after">
    <LongRows<GameBeforeAfter>
      label="Games before and after"
      rows={result.byGame}
      keyOf={(line) => line.gameId}
      columns={[
        { label: 'Game', show: (line) => <Go resource="games" id={line.gameId}>{line.label}</Go> },
        { label: 'Day', show: (line) => dayText(line.playedOn) },
        { label: 'Places', numeric: true, show: (line) => numberText(line.places) },
        { label: 'Reads now', numeric: true, show: (line) => numberText(line.before) },
        { label: 'Reads by the plan', numeric: true, show: (line) => numberText(line.after) },
        { label: 'Locked', show: (line) => (line.isLocked ? 'Yes, it stays as it is' : 'No') },
      ]}
    />
  </Section>
);

export const Missing = ({ result }: { result: ProposalResult }) => (
  <Rows<ReadsMissing>
    label="Reads without a place"
    rows={result.shortfall}
    keyOf={(line) => line.promiseId}
    columns={[
      { label: 'Sponsor', show: (line) => (line.source === 'offer' ? `${line.sponsorName} (open offer)` : line.sponsorName) },
      { label: 'Read', show: (line) => line.readKindName },
      { label: 'Still to give', numeric: true, show: (line) => numberText(line.owed) },
      { label: 'Without a place', numeric: true, show: (line) => numberText(line.missing) },
    ]}
  />
);
