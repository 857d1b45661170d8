/** Amounts by seller, column, month and contract. `$2` and `$3` are the first and last day, or `$2` is the season whose terms are asked for. */
export interface AmountRow {
  sellerId: string;
  column: string;
  month: string;
  contractId: string | null;
  /** only of what was earned, because a read belongs to the teams of its game */
  eventId: string | null;
  cents: number;
}

/** How rows are chosen: by their day, or by the season of their term, whatever the day. */
export interface Chosen {
  where: (day: string, termId: string) => string;
}

export const BY_DAYS: Chosen = { where: (day) => `${day} between $2 and $3` };
export const BY_SEASON: Chosen = { where: (_day, termId) => `${termId} in (select term.id from term where term.department_id = $1 and term.season_id = $2)` };

const month = (day: string) => `date_trunc('month', ${day})::date as month`;

/**
 * The price by the day on which its term was signed, and what was added to or taken off it since by the day booked. What was
 * signed before these books began counts on the day it was signed.
 */
export const agreed = ({ where }: Chosen): string => `select "sellerId", "column", contract_id as "contractId", ${month('day')}, null as "eventId", sum(cents) as cents
  from (select posting.seller_id as "sellerId", posting.contract_id, posting.term_id,
      case when contract.is_in_kind then 'inKindAgreed' when event.happening ->> 'kind' in ('signed', 'openingPosition') then 'signed' else 'changed' end as "column",
      case when event.happening ->> 'kind' in ('signed', 'openingPosition') then coalesce(term.signed_on, posting.effective_on) else posting.effective_on end as day,
      case when posting.from_account = 'promised' then posting.amount else -posting.amount end as cents
    from posting join ledger_event as event on event.department_id = $1 and event.id = posting.event_id
      join contract on contract.department_id = $1 and contract.id = posting.contract_id
      join term on term.department_id = $1 and term.id = posting.term_id
    where posting.department_id = $1 and posting.journal = 'agreed' and (posting.from_account = 'promised' or posting.to_account = 'promised')) as moved
  where ${where('day', 'term_id')} group by 1, 2, 3, 4 having sum(cents) <> 0`;

/** Invoices less voids and memos, before tax. A memo over what was paid in goods lowers the goods. Charges and what was billed before the books began are left out. */
export const billed = ({ where }: Chosen): string => `select document.seller_id as "sellerId", document."column", document.contract_id as "contractId", ${month('event.booked_on')}, null as "eventId",
    sum(document.cents) as cents
  from (select seller_id, 'billed' as "column", contract_id, term_id, event_id, net_cents as cents from invoice where department_id = $1 and kind = 'invoice'
    union all select invoice.seller_id, 'billed', invoice.contract_id, invoice.term_id, voided.event_id, -invoice.net_cents
      from invoice_void as voided join invoice on invoice.department_id = $1 and invoice.id = voided.invoice_id
      where voided.department_id = $1 and invoice.kind = 'invoice'
    union all select memo.seller_id, case when memo.invoice_id is null and contract.is_in_kind then 'goodsReceived' else 'billed' end, coalesce(memo.contract_id, invoice.contract_id),
        coalesce(memo.term_id, invoice.term_id), memo.event_id, -memo.net_cents
      from credit_memo as memo left join invoice on invoice.department_id = $1 and invoice.id = memo.invoice_id
        left join contract on contract.department_id = $1 and contract.id = coalesce(memo.contract_id, invoice.contract_id)
      where memo.department_id = $1) as document
    join ledger_event as event on event.department_id = $1 and event.id = document.event_id
  where ${where('event.booked_on', 'document.term_id')} group by 1, 2, 3, 4 having sum(document.cents) <> 0`;

/** What was earned, event by event and account by account, and goods that came in. */
export const earned = ({ where }: Chosen): string => {
  const side = (account: string, sign: string) => `select seller_id, contract_id, event_id, effective_on, ${account} as account, ${sign}amount as amount from posting
      where department_id = $1 and journal = 'money' and ${account} in ('4000', '4010', '4050', '4090', '5000') and ${where('effective_on', 'term_id')}`;
  return `select seller_id as "sellerId", case account when '4010' then 'inKindEarned' when '5000' then 'goodsReceived' else 'earned' end as "column",
      contract_id as "contractId", ${month('effective_on')}, event_id as "eventId", sum(case account when '5000' then -amount else amount end) as cents
    from (${side('from_account', '')} union all ${side('to_account', '-')}) as moved
    group by seller_id, account, contract_id, effective_on, event_id having sum(amount) <> 0 order by event_id, account`;
};

/** Payments by the invoices to which they were applied; charges, and what was paid before the books began, are left out. */
export const applied = ({ where }: Chosen): string => `select invoice.seller_id as "sellerId", 'collected' as "column", invoice.contract_id as "contractId", ${month('event.booked_on')}, null as "eventId",
    sum(application.amount_cents) as cents
  from application join payment on payment.department_id = $1 and payment.id = application.payment_id
    join invoice on invoice.department_id = $1 and invoice.id = application.invoice_id
    join ledger_event as event on event.department_id = $1 and event.id = application.event_id
  where application.department_id = $1 and payment.method <> 'opening' and invoice.kind <> 'charge' and ${where('event.booked_on', 'invoice.term_id')}
  group by 1, 2, 3, 4 having sum(application.amount_cents) <> 0`;

/** How cash and undeposited receipts moved: whatever came in, less what went back and what the bank kept. Only by days: cash has no season. */
export const CASH = `select seller_id as "sellerId", 'collected' as "column", null as "contractId", ${month('effective_on')}, null as "eventId",
    sum(case when to_account in ('1000', '1050') then amount else 0 end - case when from_account in ('1000', '1050') then amount else 0 end) as cents
  from posting where department_id = $1 and journal = 'money' and effective_on between $2 and $3
    and (to_account in ('1000', '1050') or from_account in ('1000', '1050')) group by 1, 4`;

/** What a contract says of its games, and the season of its term. */
export const REACHES = `select commitment.contract_id as "contractId", term.season_id as "seasonId", commitment.team_ids as "teamIds", commitment.levels
  from commitment join term on term.department_id = $1 and term.id = commitment.term_id
  where commitment.department_id = $1 and commitment.contract_id = any($2::uuid[]) order by commitment.contract_id, commitment.place`;

export const OUR_TEAMS = `select team.id, team.name, team.level, team.season_id as "seasonId", season.name as "seasonName", school.id as "schoolId", school.name as "schoolName",
    school.account_code as "accountCode"
  from team join school on school.department_id = $1 and school.id = team.school_id join season on season.department_id = $1 and season.id = team.season_id
  where team.department_id = $1 and school.is_ours order by school.name collate "und-x-icu", season.starts_on, team.name collate "und-x-icu", team.id`;

export const SEASONS = `select id, name, starts_on as "startsOn", ends_on as "endsOn" from season where department_id = $1 order by starts_on desc, name`;

/** From when to when anything is agreed. */
export const REACH_OF_TERMS = `select min(least(starts_on, coalesce(signed_on, starts_on))) as first, max(greatest(ends_on, coalesce(signed_on, ends_on))) as last from term where department_id = $1 and signed_on is not null`;

export const SELLERS = `select id, name from seller where department_id = $1 and keeps_books_here order by name collate "und-x-icu"`;
