import { useServer } from '../api/use-server.ts';
import { Go } from '../fields/go.tsx';
import { dayText, today } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { iMay } from '../session/rights.ts';
import { spreadsheets } from './download-buttons.tsx';
import { DayPick, SellerPick } from './pickers.tsx';
import { ASK_THE_OFFICE, ReportPage } from './report-page.tsx';
import { ReportTable, some } from './report-table.tsx';
import type { TrialBalanceLine, TrialBalanceView } from './types.ts';
import { useAsked } from './use-asked.ts';

function AccountName({ line, view }: { line: TrialBalanceLine; view: TrialBalanceView }) {
  const name = `${line.account} ${line.name}`;
  return iMay('account-ledger', 'list') ? <Go to={`/account-ledger?sellerId=${view.sellerId}&account=${line.account}&to=${view.on}`}>{name}</Go> : <>{name}</>;
}

export function TrialBalancePage() {
  const { asked, query, change } = useAsked(['sellerId', 'on']);
  const report = useServer<TrialBalanceView>(`/reports/trial-balance?${query}`);
  const on = asked.on ?? today();
  return (
    <ReportPage
      title="Trial balance"
      lead={<>What each account comes to at the end of a day, by the day it was booked. {ASK_THE_OFFICE}</>}
      report={report}
      papers={spreadsheets('/reports/trial-balance', query, `trial-balance-${on}`)}
      pickers={
        <>
          <SellerPick value={asked.sellerId ?? report.data?.sellerId ?? undefined} onChange={(id) => change('sellerId', id)} />
          <DayPick label="At the end of" value={on} onChange={(day) => change('on', day)} />
        </>
      }
    >
      {(view) =>
        view.lines.length === 0 ? (
          <EmptyList>Every account of {view.sellerName} stands at zero on {dayText(view.on)}.</EmptyList>
        ) : (
          <ReportTable<TrialBalanceLine>
            label="Trial balance"
            rows={view.lines}
            keyOf={(line) => line.account}
            columns={[
              { label: 'Account', show: (line) => <AccountName line={line} view={view} /> },
              ...(view.lines.some((line) => line.outsideCode) ? [{ label: 'Outside code', show: (line: TrialBalanceLine) => line.outsideCode ?? '–' }] : []),
              { label: 'Debit', numeric: true, show: (line) => some(line.debitCents), sum: moneyText(view.debitCents) },
              { label: 'Credit', numeric: true, show: (line) => some(line.creditCents), sum: moneyText(view.creditCents) },
            ]}
          />
        )
      }
    </ReportPage>
  );
}
