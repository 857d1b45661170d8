const READ_ACCOUNTS = ['promised', 'owed', 'given', 'madeGood', 'credited', 'released', 'carried', 'extra'] as const;
export type ReadAccount = (typeof READ_ACCOUNTS)[number];

/** What an account went up by; `promised` stands on the other side of the entry, so it is turned. */
function change(account: string): string {
  const [up, down] = account === 'promised' ? ['from_account', 'to_account'] : ['to_account', 'from_account'];
  return `coalesce(sum(case when ${up} = '${account}' then amount when ${down} = '${account}' then -amount else 0 end), 0)`;
}

/** Whose statement it is, and the term it is of: the latest. `$2` contracts. */
export const HEADS = `select contract.id as "contractId", term.id as "termId", term.state, contract.number as "contractNumber", contract.title as "contractTitle",
    sponsor.id as "sponsorId", sponsor.name as "sponsorName", seller.name as "sellerName",
    department.name as "departmentName", department.zone, department.locale, department.currency, coalesce(department.settings ->> 'paper', 'letter') as paper,
    coalesce((select string_agg(distinct school.name collate "und-x-icu", ', ') from commitment join team on team.department_id = $1 and team.id = any(commitment.team_ids)
        join school on school.department_id = $1 and school.id = team.school_id
      where commitment.department_id = $1 and commitment.contract_id = contract.id),
      (select string_agg(school.name, ', ' order by school.name collate "und-x-icu") from school where school.department_id = $1 and school.is_ours), department.name) as "schoolName"
  from contract
    join department on department.id = contract.department_id
    join sponsor on sponsor.department_id = $1 and sponsor.id = contract.sponsor_id
    join seller on seller.department_id = $1 and seller.id = contract.seller_id
    join term on term.department_id = $1 and term.contract_id = contract.id
      and term.number = (select max(latest.number) from term as latest where latest.department_id = $1 and latest.contract_id = contract.id)
  where contract.department_id = $1 and contract.id = any($2::uuid[])`;

/** Where each promise stood at the end of day `$3`, from the postings alone. */
export const STANDINGS = `select commitment_id as "commitmentId", ${READ_ACCOUNTS.map((name) => `${change(name)} as "${name}"`).join(', ')}
  from posting where department_id = $1 and contract_id = any($2::uuid[]) and journal = 'reads' and occurred_on <= $3 group by commitment_id`;

const EVENT = `event.id as "eventId", event.happening, event.cause, event.cause_id as "causeId", event.occurred_on as "occurredOn", event.booked_on as "bookedOn"`;
const IN_ORDER = 'event.occurred_on, event.recorded_at, event.id';

const CHANGES_OF_PROMISE = ['makegoodAgreed', 'makegoodGiven', 'readsCredited', 'readsReleased', 'readsForfeited', 'carriedOut', 'carriedIn', 'gameCancelled', 'ended'];

/** It happened while the contract was another sponsor's. */
const OF_FORMER_OWNER = `exists (select from contract_assignment as handed join contract on contract.department_id = $1 and contract.id = handed.contract_id
    where handed.department_id = $1 and handed.contract_id = event.contract_id and handed.from_sponsor_id <> contract.sponsor_id and handed.recorded_at > event.recorded_at)`;

/** What was made good, credited, released or carried by day `$3`; a cancelled game only where it changed what is owed. */
export const CHANGES = `select ${EVENT}, event.contract_id as "contractId", ${OF_FORMER_OWNER} as "isOfFormerOwner" from ledger_event as event
  where event.department_id = $1 and event.contract_id = any($2::uuid[]) and event.occurred_on <= $3
    and event.happening ->> 'kind' in (${CHANGES_OF_PROMISE.map((kind) => `'${kind}'`).join(', ')})
    and (event.happening ->> 'kind' <> 'gameCancelled'
      or exists (select 1 from posting where posting.department_id = $1 and posting.event_id = event.id and posting.journal = 'reads'))
  order by ${IN_ORDER}`;

const moves = (account: string): string => `case when to_account = '${account}' then amount when from_account = '${account}' then -amount else 0 end`;

/**
 * What each happening by day `$3` changed of what is open on a contract. A credit is shown where it came in on this contract alone; a payment
 * for several contracts by what was applied here. Invoices and credits of a former owner are left out.
 */
export const ACCOUNTS = `with foreign_invoice as (
    select invoice.id from invoice join contract on contract.department_id = $1 and contract.id = invoice.contract_id
    where invoice.department_id = $1 and invoice.contract_id = any($2::uuid[]) and invoice.sponsor_id <> contract.sponsor_id),
  credit as (
    select contract_id, cause_id, payer_id from ledger_event join payment on payment.department_id = $1 and payment.id = cause_id
    where ledger_event.department_id = $1 and contract_id = any($2::uuid[]) and happening ->> 'kind' = 'paymentReceived'
    union select contract_id, id, payer_id from credit_memo where department_id = $1 and contract_id = any($2::uuid[])),
  own_credit as (
    select credit.contract_id, credit.cause_id from credit join contract on contract.department_id = $1 and contract.id = credit.contract_id
      join payer on payer.department_id = $1 and payer.id = credit.payer_id where coalesce(payer.sponsor_id, contract.sponsor_id) = contract.sponsor_id),
  moved as (
    select posting.contract_id, posting.event_id,
      sum(${moves('1100')} + case when own_credit.cause_id is null then 0 else ${moves('2150')} end) as cents
    from posting left join own_credit on own_credit.contract_id = posting.contract_id and own_credit.cause_id = posting.unapplied_id
    where posting.department_id = $1 and posting.contract_id = any($2::uuid[]) and posting.journal = 'money' and posting.occurred_on <= $3
      and (posting.invoice_id is null or posting.invoice_id not in (select id from foreign_invoice))
    group by posting.contract_id, posting.event_id)
  select ${EVENT}, moved.contract_id as "contractId", moved.cents,
    (select min(memo.number) from credit_memo as memo where memo.department_id = $1 and memo.event_id = event.id) as "memoNumber"
  from moved join ledger_event as event on event.department_id = $1 and event.id = moved.event_id
  where moved.cents <> 0 order by ${IN_ORDER}`;

/** The latest statement of each contract. */
export const LATEST = `select distinct on (contract_id) contract_id as "contractId", id, number, content_digest as "contentDigest"
  from performance_statement where department_id = $1 and contract_id = any($2::uuid[]) order by contract_id, number desc`;

/** The titles of the copy of those sponsors whose contracts `$2` are: a contract that was handed on was read in another's words before. */
export const OWN_TITLES = `select distinct copy.sponsor_id as "sponsorId", copy.title from copy join contract on contract.department_id = $1 and contract.sponsor_id = copy.sponsor_id
  where copy.department_id = $1 and contract.id = any($2::uuid[])`;
