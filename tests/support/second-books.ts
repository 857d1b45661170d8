import type { Department } from './department.ts';

/**
 * The reports a second time, in plain SQL and from other tables where there are any: aging and what was billed, credited and
 * voided from the documents, balances from the events and not from the postings' own day.
 */

const BOOKED = 'join ledger_event as event on event.department_id = $1 and event.id';

/** Account → debit less credit, in cents; zeros left out. */
export async function trialBalanceAgain({ id, ask }: Department, sellerId: string, on: string): Promise<Record<string, number>> {
  const rows = await ask<{ account: string; cents: number }>(
    `select account, sum(cents)::bigint as cents from (
       select posting.to_account as account, posting.amount as cents, entry.event_id from posting
         join ledger_entry as entry on entry.department_id = $1 and entry.id = posting.entry_id and entry.journal = 'money' where posting.department_id = $1
       union all
       select posting.from_account, -posting.amount, entry.event_id from posting
         join ledger_entry as entry on entry.department_id = $1 and entry.id = posting.entry_id and entry.journal = 'money' where posting.department_id = $1) as side
       ${BOOKED} = side.event_id
      where event.seller_id = $2 and event.booked_on <= $3 group by account having sum(cents) <> 0 order by account`,
    [id, sellerId, on],
  );
  return Object.fromEntries(rows.map((row) => [row.account, row.cents]));
}

/** `payer bucket` → cents, the bucket as its place from 0; settled ones left out. */
export async function agingAgain({ id, ask }: Department, sellerId: string, on: string, by: 'dueDay' | 'invoiceAge'): Promise<Record<string, number>> {
  const days = by === 'dueDay' ? '$3::date - due_on' : '$3::date - issued_on';
  const edges = by === 'dueDay' ? [0, 30, 60, 90] : [30, 60, 90];
  const bucket = `case ${edges.map((edge, place) => `when ${days} <= ${edge} then ${place}`).join(' ')} else ${edges.length} end`;
  const used = (table: string, amount: string) => `(select coalesce(sum(${amount}), 0) from ${table} as used ${BOOKED} = used.event_id
      where used.department_id = $1 and used.invoice_id = invoice.id and event.booked_on <= $3)`;
  const rows = await ask<{ key: string; cents: number }>(
    `select payer_id || ' ' || bucket as key, sum(cents)::bigint as cents from (
       select invoice.payer_id, ${bucket} as bucket, gross_cents - ${used('application', 'amount_cents')}
           - ${used('invoice_discount', 'amount_cents + used.tax_cents')}
           - ${used('write_off', `case step when 'writtenOff' then amount_cents when 'recovered' then -amount_cents else 0 end`)} as cents
         from invoice join ledger_event as issued on issued.department_id = $1 and issued.id = invoice.event_id
        where invoice.department_id = $1 and invoice.seller_id = $2 and issued.booked_on <= $3
          and not exists (select from invoice_void as used ${BOOKED} = used.event_id where used.department_id = $1 and used.invoice_id = invoice.id and event.booked_on <= $3)
       ) as open group by payer_id, bucket having sum(cents) <> 0 order by 1`,
    [id, sellerId, on],
  );
  return Object.fromEntries(rows.map((row) => [row.key, row.cents]));
}

export interface RolledAgain {
  contractId: string;
  openingCents: number;
  billed: number;
  goodsReceived: number;
  earned: number;
  kept: number;
  credited: number;
  voided: number;
  closingCents: number;
}

/** Unearned revenue by contract, each column from what it is named after; contracts that never had any are left out. */
export async function rollForwardAgain({ id, ask }: Department, sellerId: string, from: string, to: string): Promise<RolledAgain[]> {
  const inSpan = 'event.booked_on between $3 and $4';
  const documents = (table: string, cents: string, contract = 'event.contract_id') => `(select coalesce(sum(${cents}), 0) from ${table} as document ${BOOKED} = document.event_id
      where document.department_id = $1 and ${contract} = contract.id and ${inSpan})`;
  const posted = (accounts: string, when: string) => `(select coalesce(sum(case when from_account in (${accounts}) then amount else 0 end - case when to_account in (${accounts}) then amount else 0 end), 0)
      from posting ${BOOKED} = posting.event_id where posting.department_id = $1 and journal = 'money' and event.contract_id = contract.id and ${when})`;
  return ask<RolledAgain>(
    `select * from (select contract.id as "contractId", ${posted(`'2100'`, 'event.booked_on < $3')}::bigint as "openingCents",
       ${documents(`(select * from invoice where kind = 'invoice')`, 'document.net_cents')}::bigint as billed,
       (select coalesce(sum((event.happening ->> 'amountCents')::bigint), 0) from ledger_event as event where event.department_id = $1 and event.contract_id = contract.id
          and event.happening ->> 'kind' = 'goodsReceived' and ${inSpan})::bigint as "goodsReceived",
       -${posted(`'4000', '4010'`, inSpan)}::bigint as earned, -${posted(`'4050'`, inSpan)}::bigint as kept,
       -${documents('credit_memo', 'document.net_cents')}::bigint as credited,
       -${documents(`(select voided.department_id, voided.event_id, invoice.net_cents from invoice_void as voided
           join invoice on invoice.department_id = voided.department_id and invoice.id = voided.invoice_id)`, 'document.net_cents')}::bigint as voided,
       ${posted(`'2100'`, 'event.booked_on <= $4')}::bigint as "closingCents"
      from contract where contract.department_id = $1 and contract.seller_id = $2) as rolled
     where "openingCents" <> 0 or billed <> 0 or "goodsReceived" <> 0 or earned <> 0 or kept <> 0 or credited <> 0 or voided <> 0 or "closingCents" <> 0
     order by "contractId"`,
    [id, sellerId, from, to],
  );
}
