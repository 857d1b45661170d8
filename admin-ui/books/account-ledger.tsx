import { Typography } from '@mui/material';
import { useServer } from '../api/use-server.ts';
import { CauseLink } from '../contracts/statements/cause-link.tsx';
import { Go } from '../fields/go.tsx';
import { dayText, today } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Figures } from '../show/figures.tsx';
import { count } from '../words/count.ts';
import { spreadsheets } from './download-buttons.tsx';
import { DayPick, Pick, SellerPick } from './pickers.tsx';
import { ReportPage } from './report-page.tsx';
import { ReportTable, some } from './report-table.tsx';
import type { AccountLedgerView, LedgerLine } from './types.ts';
import { useAsked } from './use-asked.ts';

export function AccountLedgerPage() {
  const { asked, query, change } = useAsked(['sellerId', 'account', 'from', 'to']);
  const report = useServer<AccountLedgerView>(`/reports/account-ledger?${query}`);
  const view = report.data;
  const to = asked.to ?? today();
  const account = asked.account ?? view?.account;
  return (
    <ReportPage
      title="Account ledger"
      lead="One account, posting by posting: what happened, what stands behind it, and the balance after it. A balance below zero is a credit."
      report={report}
      papers={spreadsheets('/reports/account-ledger', query, `account-${account ?? ''}-${to}`)}
      pickers={
        <>
          <SellerPick value={asked.sellerId ?? view?.sellerId ?? undefined} onChange={(id) => change('sellerId', id)} />
          <Pick label="Account" value={account} choices={(view?.accounts ?? []).map(({ code, name }) => ({ id: code, name: `${code} ${name}` }))} onChange={(code) => change('account', code)} />
          <DayPick label="From" value={asked.from ?? view?.from} onChange={(day) => change('from', day)} />
          <DayPick label="Through" value={to} onChange={(day) => change('to', day)} />
        </>
      }
    >
      {(ledger) => <Lines ledger={ledger} />}
    </ReportPage>
  );
}

function Lines({ ledger }: { ledger: AccountLedgerView }) {
  const names = new Map(ledger.accounts.map(({ code, name }) => [code, `${code} ${name}`]));
  return (
    <>
      <Figures figures={[{ label: 'Opening', value: moneyText(ledger.openingCents) }, { label: 'Closing', value: moneyText(ledger.closingCents) }]} />
      {ledger.lines.length === 0 ? (
        <EmptyList>Nothing moved in {names.get(ledger.account)} from {dayText(ledger.from)} through {dayText(ledger.to)}.</EmptyList>
      ) : (
        <ReportTable<LedgerLine>
          label={`Ledger of ${ledger.name}`}
          rows={ledger.lines}
          keyOf={(line) => line.id}
          columns={[
            { label: 'What happened', show: (line) => line.sentence },
            { label: 'Booked', show: (line) => <Days line={line} /> },
            { label: 'Debit', numeric: true, show: (line) => some(line.debitCents) },
            { label: 'Credit', numeric: true, show: (line) => some(line.creditCents) },
            { label: 'Balance', numeric: true, show: (line) => moneyText(line.balanceCents) },
            { label: 'Because of', show: (line) => <CauseLink cause={line.cause} /> },
            { label: 'Contract', show: (line) => (line.contractId ? <Go resource="contracts" id={line.contractId}>{line.contractTitle ?? 'Contract'}</Go> : '–') },
            { label: 'Against', show: (line) => names.get(line.against) ?? line.against },
          ]}
        />
      )}
      {ledger.leftOff > 0 && <Typography sx={{ mt: 1.5 }}>{count(ledger.leftOff, 'later posting')} left off here; the files hold more, or ask for fewer days.</Typography>}
    </>
  );
}

/** What came for a closed month was booked later than it happened. */
const Days = ({ line }: { line: LedgerLine }) => (
  <>
    <Typography component="span" sx={{ whiteSpace: 'nowrap' }}>{dayText(line.bookedOn)}</Typography>
    {line.occurredOn !== line.bookedOn && <Typography component="span" sx={{ display: 'block', color: 'text.secondary', fontSize: '0.9rem' }}>happened {dayText(line.occurredOn)}</Typography>}
  </>
);
