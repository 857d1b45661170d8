import { Alert, Box, Link, Typography } from '@mui/material';
import { useServer } from '../api/use-server.ts';
import { Tag } from '../fields/tag.tsx';
import type { Mood } from '../fields/tag.tsx';
import { Counts } from './counts.tsx';
import { Part } from './part.tsx';
import type { ContractOfSponsor, CreditOfSponsor, DollarsWithSeller, InvoiceOfSponsor, MoneyOfSponsor, PaymentOfSponsor } from './types.ts';
import { useWritten } from './written.tsx';

/** The other ledger: what it costs, what was invoiced and paid, and the papers. */
export function Money({ id, title, contracts }: { id: string; title: string; contracts: readonly ContractOfSponsor[] }) {
  const { data, error } = useServer<MoneyOfSponsor>('/sponsor-page/money');
  const { money } = useWritten();
  const isEmpty = data !== undefined && data.sellers.length === 0;
  return (
    <Part id={id} title={title}>
      {contracts.map((contract) => <Price key={contract.contractId} contract={contract} />)}
      {error && <Alert severity="error" role="alert">{error.message}</Alert>}
      {!data && !error && <Typography role="status">Reading…</Typography>}
      {isEmpty && contracts.every((contract) => contract.isInvoicedHere) && <Typography sx={{ mt: 1 }}>Nothing was invoiced yet.</Typography>}
      {data?.sellers.map((seller) => <WithSeller key={seller.sellerId} seller={seller} money={data} isOnlyOne={data.sellers.length === 1} />)}
      {data && !isEmpty && <Typography sx={{ mt: 2, displayPrint: 'none' }}><Link href="/api/sponsor-page/account-statement.pdf" target="_blank" rel="noopener" sx={{ display: 'inline-block', py: 1 }}>Account statement of this fiscal year (PDF)</Link></Typography>}
      <Typography sx={{ color: 'text.secondary', mt: 2 }}>
        Invoices follow the local rules and the school’s business office. Questions about tax: ask your adviser. Amounts invoiced include sales tax where it applies{data && data.sellers.some((seller) => seller.taxCents > 0) ? `: ${money(data.sellers.reduce((sum, seller) => sum + seller.taxCents, 0))} so far` : ''}.
      </Typography>
    </Part>
  );
}

function Price({ contract: { title, sellerName, pricing, isInKind, isInvoicedHere, priceCents, stillToInvoiceCents } }: { contract: ContractOfSponsor }) {
  const { money } = useWritten();
  return (
    <Box sx={{ py: 1, borderBottom: 1, borderColor: 'divider', breakInside: 'avoid' }}>
      <Typography sx={{ fontWeight: 600, overflowWrap: 'anywhere' }}>{title}</Typography>
      <Typography>
        {pricing === 'perRead' ? 'Price so far' : 'Price'} {money(priceCents)}{isInKind ? ', paid in goods or services' : ''}. {isInvoicedHere ? (stillToInvoiceCents > 0 ? `${money(stillToInvoiceCents)} of it still to be invoiced.` : 'All of it is invoiced.') : `Invoices come from ${sellerName}.`}
      </Typography>
    </Box>
  );
}

function WithSeller({ seller, money: all, isOnlyOne }: { seller: DollarsWithSeller; money: MoneyOfSponsor; isOnlyOne: boolean }) {
  const { money } = useWritten();
  const own = <Row extends { sellerId: string }>(rows: readonly Row[]): Row[] => rows.filter((row) => row.sellerId === seller.sellerId);
  const amounts: [string, number, boolean][] = [
    ['Invoiced', seller.invoicedCents, true],
    ['Paid', seller.paidCents, true],
    ['Credited', seller.creditedCents, false],
    ['Taken off', seller.takenOffCents, false],
    ['Open', seller.openCents, true],
    ['Not used yet', seller.unusedCents, false],
  ];
  return (
    <Box component="section" aria-label={`Dollars with ${seller.sellerName}`} sx={{ mt: 2 }}>
      {!isOnlyOne && <Typography variant="h3">{seller.sellerName}</Typography>}
      <Counts counts={amounts.flatMap(([label, cents, always]) => (always || cents !== 0 ? [{ label, value: money(cents) }] : []))} />
      {seller.overdueCents > 0 && <Typography sx={{ mt: 1 }}><Tag mood="care">{money(seller.overdueCents)} is past its due day</Tag></Typography>}
      {seller.openCents > 0 && seller.remitTo && <Typography sx={{ mt: 1, whiteSpace: 'pre-line', overflowWrap: 'anywhere' }}>Payments go to: {seller.remitTo}</Typography>}
      <Papers title="Invoices" rows={own(all.invoices).map((invoice) => <Invoice key={invoice.id} invoice={invoice} />)} />
      <Papers title="Credit memos" rows={own(all.credits).map((credit) => <Credit key={credit.id} credit={credit} />)} />
      <Papers title="Payments received" rows={own(all.payments).map((payment) => <Payment key={payment.id} payment={payment} />)} />
    </Box>
  );
}

function Papers({ title, rows }: { title: string; rows: React.ReactNode[] }) {
  if (rows.length === 0) return null;
  return (
    <>
      <Typography component="h4" sx={{ fontWeight: 600, mt: 2, breakAfter: 'avoid' }}>{title}</Typography>
      <Box component="ul" sx={{ listStyle: 'none', p: 0, m: 0 }}>{rows}</Box>
    </>
  );
}

const row = { display: 'flex', flexWrap: 'wrap', columnGap: 2, rowGap: 0.5, alignItems: 'baseline', py: 1, borderBottom: 1, borderColor: 'divider', breakInside: 'avoid' } as const;
const paper = { display: 'inline-block', py: 1, fontWeight: 600 } as const;

const INVOICE_STATES: Record<InvoiceOfSponsor['state'], { words: string; mood: Mood }> = {
  paid: { words: 'Paid', mood: 'good' },
  open: { words: 'Open', mood: 'plain' },
  partlyPaid: { words: 'Paid in part', mood: 'plain' },
  overdue: { words: 'Past its due day', mood: 'care' },
  void: { words: 'Void: nothing is due on it', mood: 'plain' },
  writtenOff: { words: 'Settled: no longer asked for', mood: 'plain' },
};

function Invoice({ invoice: { id, number, kind, issuedOn, dueOn, grossCents, balanceCents, state } }: { invoice: InvoiceOfSponsor }) {
  const { day, money } = useWritten();
  const { words, mood } = INVOICE_STATES[state];
  const isDue = balanceCents > 0;
  return (
    <Box component="li" sx={row}>
      <Link href={`/api/sponsor-page/invoices/${id}/invoice.pdf`} target="_blank" rel="noopener" sx={paper}>{kind === 'charge' ? 'Charge' : 'Invoice'} {number} (PDF)</Link>
      <span>{day(issuedOn)}</span>
      <Box component="span" className="tabular">{money(grossCents)}</Box>
      <span><Tag mood={mood}>{words}</Tag>{isDue ? `: ${money(balanceCents)} due ${day(dueOn)}` : ''}</span>
    </Box>
  );
}

function Credit({ credit: { id, number, issuedOn, grossCents, leftCents } }: { credit: CreditOfSponsor }) {
  const { day, money } = useWritten();
  return (
    <Box component="li" sx={row}>
      <Link href={`/api/sponsor-page/credit-memos/${id}/credit-memo.pdf`} target="_blank" rel="noopener" sx={paper}>Credit memo {number} (PDF)</Link>
      <span>{day(issuedOn)}</span>
      <Box component="span" className="tabular">{money(grossCents)}</Box>
      <span>{leftCents > 0 ? `${money(leftCents)} not used yet` : 'Used'}</span>
    </Box>
  );
}

const METHODS: Record<PaymentOfSponsor['method'], string> = { cash: 'Cash', check: 'Check', card: 'Card', transfer: 'Bank transfer', opening: 'Taken over from the books before' };

function Payment({ payment: { number, receivedOn, method, reference, amountCents, leftCents, cameBackOn } }: { payment: PaymentOfSponsor }) {
  const { day, money } = useWritten();
  return (
    <Box component="li" sx={row}>
      <span>{number}</span>
      <span>{day(receivedOn)}</span>
      <Box component="span" className="tabular">{money(amountCents)}</Box>
      <span>{METHODS[method]}{reference ? ` ${reference}` : ''}</span>
      {cameBackOn && <Tag mood="care">Came back from the bank on {day(cameBackOn)}</Tag>}
      {leftCents > 0 && <span>{money(leftCents)} not used on an invoice yet</span>}
    </Box>
  );
}
