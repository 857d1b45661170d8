import { Box, Typography } from '@mui/material';
import { useServer } from '../api/use-server.ts';
import { DownloadButtons, spreadsheets } from '../books/download-buttons.tsx';
import { DayPick } from '../books/pickers.tsx';
import { ReportTable, some } from '../books/report-table.tsx';
import type { SellerAccount, SponsorAccountLine, SponsorAccountView } from '../books/types.ts';
import { useAsked } from '../books/use-asked.ts';
import { CauseLink } from '../contracts/statements/cause-link.tsx';
import { dayText, today } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Figures } from '../show/figures.tsx';
import { Reading } from '../show/reading.tsx';
import { Section } from '../show/section.tsx';
import type { Sponsor } from './types.ts';

/** What was billed to the sponsor and what it paid, each seller of record apart. */
export function AccountOfSponsor({ sponsor }: { sponsor: Sponsor }) {
  const { asked, query, change } = useAsked(['from', 'to']);
  const path = `/sponsors/${sponsor.id}/account-statement`;
  const report = useServer<SponsorAccountView>(`${path}?${query}`);
  const to = asked.to ?? today();
  const fileName = `account-${sponsor.name.replace(/[^\p{L}\p{N}]+/gu, '-')}-${to}`;
  const papers = [{ label: 'PDF', path: `${path}.pdf?${query}`, fileName: `${fileName}.pdf` }, ...spreadsheets(path, query, fileName)];
  return (
    <Section title="Account" lead="A balance is what is open on invoices less credit that is not applied yet." actions={<DownloadButtons papers={papers} />}>
      <Box sx={{ display: 'flex', gap: 1.5, flexWrap: 'wrap', mb: 1.5 }}>
        <DayPick label="From" value={asked.from ?? report.data?.from} onChange={(day) => change('from', day)} />
        <DayPick label="Through" value={to} onChange={(day) => change('to', day)} />
      </Box>
      <Reading of={report}>
        {(view) =>
          view.sellers.length === 0 ? (
            <EmptyList>Nothing was billed or paid from {dayText(view.from)} through {dayText(view.to)}, and nothing is open.</EmptyList>
          ) : (
            <>{view.sellers.map((account) => <OfSeller key={account.sellerId} account={account} view={view} />)}</>
          )
        }
      </Reading>
    </Section>
  );
}

function OfSeller({ account, view }: { account: SellerAccount; view: SponsorAccountView }) {
  const ages = view.buckets.map((label, place) => ({ label, cents: account.bucketCents[place] ?? 0 })).filter((bucket) => bucket.cents !== 0);
  return (
    <Box sx={{ mb: 2.5 }}>
      <Typography variant="h3" sx={{ mb: 1 }}>{account.sellerName}</Typography>
      <Figures figures={[{ label: 'Opening', value: moneyText(account.openingCents) }, { label: 'Closing', value: moneyText(account.closingCents) }, { label: 'Open on invoices', value: moneyText(account.openCents) }, { label: 'Credit not applied', value: moneyText(account.unappliedCents) }]} />
      {ages.length > 0 && <Typography sx={{ mb: 1 }}>Open by age: {ages.map(({ label, cents }) => `${label} ${moneyText(cents)}`).join('; ')}.</Typography>}
      {account.lines.length > 0 && (
        <ReportTable<SponsorAccountLine>
          label={`Account with ${account.sellerName}`}
          rows={account.lines}
          keyOf={(line) => line.id}
          columns={[
            { label: 'What happened', show: (line) => line.sentence },
            { label: 'Day', show: (line) => <Typography component="span" sx={{ whiteSpace: 'nowrap' }}>{dayText(line.on)}</Typography> },
            { label: 'Charges', numeric: true, show: (line) => some(line.chargeCents) },
            { label: 'Payments and credits', numeric: true, show: (line) => some(line.creditCents) },
            { label: 'Balance', numeric: true, show: (line) => moneyText(line.balanceCents) },
            { label: 'Because of', show: (line) => <CauseLink cause={line.document} /> },
          ]}
        />
      )}
    </Box>
  );
}
