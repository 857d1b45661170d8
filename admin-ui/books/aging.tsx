import { Typography } from '@mui/material';
import { useServer } from '../api/use-server.ts';
import { Go } from '../fields/go.tsx';
import { dayText, today } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { spreadsheets } from './download-buttons.tsx';
import { DayPick, Pick, SellerPick } from './pickers.tsx';
import { ReportPage } from './report-page.tsx';
import { ReportTable, some } from './report-table.tsx';
import type { ReportColumn } from './report-table.tsx';
import type { AgingLine, AgingView } from './types.ts';
import { useAsked } from './use-asked.ts';

const BASES = [{ id: 'dueDay', name: 'Days past due' }, { id: 'invoiceAge', name: 'Age of the invoice' }];

/** The report says on its face by what it ages. */
const FACE: Record<AgingView['by'], string> = {
  dueDay: 'By days past due: an invoice is current through its due day.',
  invoiceAge: 'By the age of the invoice: days since it was issued, whether or not it is due.',
};

export function AgingPage() {
  const { asked, query, change } = useAsked(['sellerId', 'on', 'by']);
  const report = useServer<AgingView>(`/reports/aging?${query}`);
  const on = asked.on ?? today();
  return (
    <ReportPage
      title="Aging"
      lead="What was open on invoices at the end of a day, by sponsor and by age. Credit that is not applied yet stands beside it."
      report={report}
      papers={spreadsheets('/reports/aging', query, `aging-${on}`)}
      pickers={
        <>
          <SellerPick value={asked.sellerId ?? report.data?.sellerId ?? undefined} onChange={(id) => change('sellerId', id)} />
          <DayPick label="At the end of" value={on} onChange={(day) => change('on', day)} />
          <Pick label="By" value={asked.by ?? report.data?.by} choices={BASES} onChange={(by) => change('by', by)} />
        </>
      }
    >
      {(view) => (
        <>
          <Typography sx={{ mb: 1, fontWeight: 600 }}>{FACE[view.by]}</Typography>
          {view.lines.length === 0 ? (
            <EmptyList>Nothing was open on {dayText(view.on)}: every invoice of {view.sellerName} was settled.</EmptyList>
          ) : (
            <ReportTable<AgingLine> label="Aging" rows={view.lines} keyOf={(line) => `${line.sponsorId} ${line.payerId}`} columns={columnsOf(view)} />
          )}
        </>
      )}
    </ReportPage>
  );
}

function columnsOf(view: AgingView): ReportColumn<AgingLine>[] {
  const buckets = view.buckets.map((label, place): ReportColumn<AgingLine> => ({
    label, numeric: true, show: (line) => some(line.bucketCents[place] ?? 0), sum: some(view.bucketCents[place] ?? 0),
  }));
  return [
    { label: 'Sponsor', show: (line) => <Who line={line} /> },
    ...buckets,
    { label: 'Open in all', numeric: true, show: (line) => moneyText(line.totalCents), sum: moneyText(view.totalCents) },
    { label: 'Credit not applied', numeric: true, show: (line) => some(line.unappliedCents), sum: some(view.unappliedCents) },
    { label: 'Oldest invoice', show: (line) => line.oldestNumber ?? '–' },
  ];
}

function Who({ line }: { line: AgingLine }) {
  const other = line.sponsorName !== null && line.payerName !== line.sponsorName;
  return (
    <>
      {line.sponsorId ? <Go to={`/sponsors/${line.sponsorId}/show`}>{line.sponsorName}</Go> : <Go resource="payers" id={line.payerId}>{line.payerName}</Go>}
      {other && <Typography component="span" sx={{ display: 'block', color: 'text.secondary', fontSize: '0.9rem', fontWeight: 400 }}>paid by {line.payerName}</Typography>}
    </>
  );
}
