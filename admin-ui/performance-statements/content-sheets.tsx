import { Box, Typography } from '@mui/material';
import { audienceOf, audienceWords } from '../../server/domain/reports/audience.ts';
import { clockWords, outcomeWords } from '../../server/domain/reports/outcome-words.ts';
import { PaceChart } from '../charts/pace-chart.tsx';
import { ChartWithTable } from '../charts/chart-with-table.tsx';
import { Whole } from '../fields/whole.tsx';
import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { Section } from '../show/section.tsx';
import { count, numberText } from '../words/count.ts';
import type { StatementContent } from './types.ts';

type Line = StatementContent['lines'][number];
type Night = StatementContent['nights'][number];
type NightRead = Night['reads'][number] & Pick<Night, 'heldOn' | 'opponent' | 'attendance'> & { id: string };

const SOMETIMES = [['released', 'Released'], ['carried', 'Carried'], ['extra', 'Extra']] as const;

export function PromisedAndGiven({ content }: { content: StatementContent }) {
  const { lines, notSignedOff } = content;
  return (
    <Section title="What was promised and what was given">
      {lines.length === 0 ? <EmptyList>No reads were promised.</EmptyList> : (
        <Rows<Line>
          label="Promised and given"
          rows={lines}
          keyOf={(line) => line.commitmentId}
          columns={[
            { label: 'Read', show: (line) => line.name },
            { label: 'Promised', numeric: true, show: (line) => numberText(line.promised) },
            { label: 'Given', numeric: true, show: (line) => numberText(line.given) },
            { label: 'Made good', numeric: true, show: (line) => numberText(line.madeGood) },
            { label: 'Credited', numeric: true, show: (line) => numberText(line.credited) },
            { label: 'Still to come', numeric: true, show: (line) => numberText(line.stillToCome) },
            ...SOMETIMES.filter(([name]) => lines.some((line) => line[name] !== 0)).map(([name, label]) => ({ label, numeric: true, show: (line: Line) => numberText(line[name]) })),
          ]}
        />
      )}
      {notSignedOff > 0 && <p>{count(notSignedOff, 'read')} logged on nights that are not signed off yet {notSignedOff === 1 ? 'is' : 'are'} not counted here.</p>}
    </Section>
  );
}

export function Pace({ content: { pace, head } }: { content: StatementContent }) {
  const last = pace.at(-1);
  if (!last || pace.length < 2) return null;
  const table = (
    <Rows
      label="Pace by day"
      rows={pace}
      keyOf={(point) => point.on}
      columns={[{ label: 'Day', show: (point) => dayText(point.on) }, { label: 'Expected', numeric: true, show: (point) => numberText(point.expected) }, { label: 'Given', numeric: true, show: (point) => numberText(point.given) }]}
    />
  );
  const summary = `By ${dayText(last.on)} an even pace would have given ${numberText(last.expected)} reads; ${numberText(last.given)} were given or made good.`;
  return <Box sx={{ mb: 2 }}><ChartWithTable title="Pace" summary={summary} chart={<PaceChart points={pace} today={head.throughOn} />} table={table} /></Box>;
}

export function Benefits({ content: { benefits } }: { content: StatementContent }) {
  if (benefits.length === 0) return null;
  return (
    <Section title="Other benefits">
      <Rows
        label="Other benefits"
        rows={benefits}
        keyOf={(one, place) => `${one.name} ${place}`}
        columns={[
          { label: 'Benefit', show: (one) => one.name },
          { label: 'Agreed', numeric: true, show: (one) => numberText(one.quantity) },
          { label: 'Delivered', numeric: true, show: (one) => (one.shownFrom ? 'Day by day' : numberText(one.delivered)) },
          { label: 'Due', show: (one) => (one.shownFrom && one.shownTo ? `${dayText(one.shownFrom)} to ${dayText(one.shownTo)}` : one.dueOn ? dayText(one.dueOn) : '–') },
          { label: 'Proof', show: (one) => one.proofs.map(({ on, proof }) => `${dayText(on)}: ${proof}`).join('; ') || '–' },
        ]}
      />
    </Section>
  );
}

const windowText = ({ windowName, clock }: NightRead): string => [windowName, clock && clockWords(clock)].filter(Boolean).join(', ') || '–';

export function NightByNight({ content: { nights } }: { content: StatementContent }) {
  const rows: NightRead[] = nights.flatMap(({ nightId, heldOn, opponent, attendance, reads }) => reads.map((read, place) => ({ ...read, heldOn, opponent, attendance, id: `${nightId} ${place}` })));
  return (
    <Section title="Night by night">
      {rows.length === 0 ? <EmptyList>No night was played for this contract yet.</EmptyList> : (
        <Rows<NightRead>
          label="Reads night by night"
          rows={rows}
          columns={[
            { label: 'Day', show: (row) => <Whole>{dayText(row.heldOn)}</Whole> },
            { label: 'Opponent', show: (row) => row.opponent },
            { label: 'Read', show: (row) => row.readKindName },
            { label: 'Window, time', show: windowText },
            { label: 'Copy', show: (row) => (row.copyTitle ? `${row.copyTitle}${row.copyVersionNumber ? `, version ${row.copyVersionNumber}` : ''}` : '–') },
            { label: 'At the table', show: (row) => row.atTheTable ?? '–' },
            { label: 'What became of it', show: (row) => outcomeWords(row, dayText) },
            { label: 'Attendance', numeric: true, show: (row) => (row.attendance === null ? 'not recorded' : numberText(row.attendance)) },
          ]}
        />
      )}
      <Typography variant="h3" sx={{ mt: 2, mb: 1 }}>Audience contacts, an estimate</Typography>
      {audienceWords(audienceOf(nights)).map((words) => <Box component="p" key={words} sx={{ mt: 0, maxWidth: '70ch' }}>{words}</Box>)}
    </Section>
  );
}

export function ChangesAndAccount({ content: { changes, account } }: { content: StatementContent }) {
  return (
    <>
      <Section title="Makegoods, credits and what was carried">
        {changes.length === 0 ? <EmptyList>None.</EmptyList> : (
          <Rows label="Makegoods and credits" rows={changes} keyOf={(_, place) => String(place)} columns={[{ label: 'Day', show: (one) => <Whole>{dayText(one.on)}</Whole> }, { label: 'What happened', show: (one) => one.sentence }]} />
        )}
      </Section>
      <Section title="Account" lead="A balance is what is open on invoices less credit that is not applied yet. Local rules and the business office decide about sales tax and how the money is booked.">
        {account.length === 0 ? <EmptyList>Nothing was billed or paid yet.</EmptyList> : (
          <Rows
            label="Account"
            rows={account}
            keyOf={(_, place) => String(place)}
            columns={[
              { label: 'Day', show: (line) => <Whole>{dayText(line.on)}</Whole> },
              { label: 'What happened', show: (line) => line.sentence },
              { label: 'Charges', numeric: true, show: (line) => (line.chargeCents === 0 ? '–' : moneyText(line.chargeCents)) },
              { label: 'Payments and credits', numeric: true, show: (line) => (line.creditCents === 0 ? '–' : moneyText(line.creditCents)) },
              { label: 'Balance', numeric: true, show: (line) => moneyText(line.balanceCents) },
            ]}
          />
        )}
      </Section>
    </>
  );
}
