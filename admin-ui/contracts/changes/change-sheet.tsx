import { Alert, Box, Typography } from '@mui/material';
import { contractBalanceName } from '../../../server/domain/ledger/account.ts';
import { moneyText } from '../../format/money.ts';
import { Waiting } from '../../layout/waiting.tsx';
import { Section } from '../../show/section.tsx';
import { numberText } from '../../words/count.ts';
import { BeforeAfter } from './before-after.tsx';
import type { Compared } from './before-after.tsx';
import type { usePreview } from '../../api/use-preview.ts';
import type { Amounts, ChangePreview, ContractChange, MemoPreview } from './types.ts';

type Line = ContractChange['lines'][number];
type Reads = NonNullable<Line['before']>;

const READS: readonly (readonly [keyof Reads, string, boolean])[] = [
  ['promised', 'promised', true], ['owed', 'still owed', true], ['given', 'given', false], ['madeGood', 'made good', false], ['credited', 'credited', false],
  ['released', 'released', false], ['carried', 'carried over', false], ['extra', 'extra', false],
];

const DAYS: Partial<Record<keyof Reads, string>> = { promised: 'days in all', owed: 'days to come', given: 'days passed' };

/** Promised and owed always; the rest where there is something of it. */
function readRows(line: Line): Compared[] {
  const rows = READS.map(([key, words, always]) => ({ words: line.isOverDays ? (DAYS[key] ?? `days ${words}`) : words, always, before: line.before?.[key] ?? 0, after: line.after?.[key] ?? 0 }));
  const money = { name: `${line.name}: to be earned`, before: moneyText(line.openCentsBefore), after: moneyText(line.openCentsAfter) };
  return [
    ...rows.filter(({ always, before, after }) => always || before !== 0 || after !== 0).map(({ words, before, after }) => ({ name: `${line.name}: ${words}`, before: numberText(before), after: numberText(after) })),
    ...(line.openCentsBefore + line.openCentsAfter > 0 ? [money] : []),
  ];
}

function moneyRows({ before, after }: { before: Amounts; after: Amounts }): Compared[] {
  const row = (name: string, of: (amounts: Amounts) => number) => ({ name, before: moneyText(of(before)), after: moneyText(of(after)) });
  const balances = [before.contractBalanceCents, after.contractBalanceCents].map((cents) => contractBalanceName(cents));
  const isShown = (name: string) => balances.includes(name as never);
  return [
    row('Price', (one) => one.priceCents),
    row('Billed', (one) => one.billedCents),
    row('To bill', (one) => one.toBillCents),
    row('Earned', (one) => one.revenueCents - one.allowancesCents),
    ...(isShown('Unearned revenue') ? [row('Unearned revenue', (one) => Math.max(0, -one.contractBalanceCents))] : []),
    ...(isShown('Unbilled receivable') ? [row('Unbilled receivable', (one) => Math.max(0, one.contractBalanceCents))] : []),
    row('Unpaid on invoices', (one) => one.receivableCents),
  ];
}

function memoText({ netCents, taxCents, grossCents, parts }: MemoPreview): string {
  const invoices = parts.map((part) => (part.invoiceNumber === null ? `${moneyText(part.netCents)} that was paid in goods` : `${moneyText(part.netCents + part.taxCents)} of invoice ${part.invoiceNumber}`));
  return `A credit memo of ${moneyText(grossCents)}${taxCents > 0 ? ` (${moneyText(netCents)} and ${moneyText(taxCents)} tax)` : ''} is written. It credits ${invoices.join(' and ')}.`;
}

function OneContract({ change, isOther }: { change: ContractChange; isOther: boolean }) {
  return (
    <Section title={isOther ? `The other contract: ${change.title}` : 'Before and after'}>
      <BeforeAfter label={`Reads of ${change.title} before and after`} first="Reads" rows={change.lines.flatMap(readRows)} />
      <BeforeAfter label={`Dollars of ${change.title} before and after`} first="Dollars" rows={moneyRows(change)} />
      <Typography variant="h3" sx={{ mb: 0.5 }}>What will be posted</Typography>
      {change.sentences.length === 0 ? (
        <Typography>Nothing.</Typography>
      ) : (
        <Box component="ul" sx={{ mt: 0, pl: 2.5 }}>
          {change.sentences.map(({ sentence }) => <li key={sentence}>{sentence}</li>)}
        </Box>
      )}
      {change.memos.map((memo) => <Alert key={memo.grossCents} severity="info" icon={false}>{memoText(memo)}</Alert>)}
    </Section>
  );
}

/** What a change would do to both ledgers, as soon as the form says enough. */
export function ChangeSheet({ asked, isFilledIn }: { asked: ReturnType<typeof usePreview<ChangePreview>>; isFilledIn: boolean }) {
  const { data, error, isFetching } = asked;
  if (!isFilledIn) return <Section title="Before and after">Fill in the form; what it would do is shown here before anything is done.</Section>;
  if (error) return <Alert severity="info" icon={false} sx={{ mb: 2 }}>{error.message}</Alert>;
  if (!data) return isFetching ? <Waiting what="Working it out" /> : null;
  if (data.refusal) return <Alert severity="warning" icon={false} role="status" sx={{ mb: 2 }}>{data.refusal.sentence}</Alert>;
  return (
    <Box aria-live="polite">
      {data.cautions.map((caution) => <Alert key={caution} severity="info" icon={false} sx={{ mb: 1 }}>{caution}</Alert>)}
      {data.contracts.map((change, place) => <OneContract key={change.contractId} change={change} isOther={place > 0} />)}
    </Box>
  );
}
