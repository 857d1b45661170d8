import { Go } from '../fields/go.tsx';
import { Tag } from '../fields/tag.tsx';
import { dayText } from '../format/day.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { Section } from '../show/section.tsx';
import { numberText } from '../words/count.ts';
import type { LateNight, MonthPage } from './types.ts';

/** The cut-off list. */
export function LateNights({ month }: { month: MonthPage }) {
  const closed = month.state === 'closed';
  const lead = closed
    ? 'These nights were not signed off when the month was closed. What they count is booked in the month after.'
    : 'Sign these nights off and what they gave is earned in this month. Whatever is signed off after the close is earned in the month after.';
  return (
    <Section title="Nights not signed off" lead={month.lateNights.length > 0 ? lead : undefined}>
      {month.lateNights.length === 0 ? (
        <EmptyList>{closed ? 'Every night of this month was signed off when it was closed.' : 'None. Every night of this month is signed off.'}</EmptyList>
      ) : (
        <Rows<LateNight>
          label="Nights not signed off"
          rows={month.lateNights}
          keyOf={(night) => night.nightId}
          columns={[
            { label: 'Night', show: (night) => <Go resource="nights" id={night.nightId}>{night.title}</Go> },
            { label: 'On', show: (night) => dayText(night.heldOn, 'weekday') },
            { label: 'At', show: (night) => night.venueName },
            { label: 'Reads planned', numeric: true, show: (night) => numberText(night.readsPlanned) },
            { label: 'Reads logged', numeric: true, show: (night) => numberText(night.readsLogged) },
            ...(closed ? [{ label: 'Since', show: (night: LateNight) => (night.signedOffSince ? <Tag mood="good">Signed off</Tag> : <Tag mood="care">Still open</Tag>) }] : []),
          ]}
        />
      )}
    </Section>
  );
}
