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
    coalesce((select string_agg(distinct school.name, ', ') from commitment join team on team.department_id = $1 and team.id = any(commitment.team_ids)
        join school on school.department_id = $1 and school.id = team.school_id
      where commitment.department_id = $1 and commitment.contract_id = contract.id),
      (select string_agg(school.name, ', ' order by school.name) from school where school.department_id = $1 and school.is_ours), department.name) as "schoolName"
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

/** What was made good, credited, released or carried by day `$3`; a cancelled game only where it changed what is owed. */
export const CHANGES = `select ${EVENT}, event.contract_id as "contractId" from ledger_event as event
  where event.department_id = $1 and event.contract_id = any($2::uuid[]) and event.occurred_on <= $3
    and event.happening ->> 'kind' in (${CHANGES_OF_PROMISE.map((kind) => `'${kind}'`).join(', ')})
    and (event.happening ->> 'kind' <> 'gameCancelled'
      or exists (select 1 from posting where posting.department_id = $1 and posting.event_id = event.id and posting.journal = 'reads'))
  order by ${IN_ORDER}`;

const moves = (account: string): string => `case when to_account = '${account}' then amount when from_account = '${account}' then -amount else 0 end`;

/**
 * What each happening by day `$3` changed of what is open on a contract. A credit is shown where it came in on this contract alone; a payment
 * for several contracts by what was applied here.
 */
export const ACCOUNTS = `with own_credit as (
    select contract_id, cause_id from ledger_event where department_id = $1 and contract_id = any($2::uuid[]) and happening ->> 'kind' = 'paymentReceived'
    union select contract_id, id from credit_memo where department_id = $1 and contract_id = any($2::uuid[])),
  moved as (
    select posting.contract_id, posting.event_id,
      sum(${moves('1100')} + case when own_credit.cause_id is null then 0 else ${moves('2150')} end) as cents
    from posting left join own_credit on own_credit.contract_id = posting.contract_id and own_credit.cause_id = posting.unapplied_id
    where posting.department_id = $1 and posting.contract_id = any($2::uuid[]) and posting.journal = 'money' and posting.occurred_on <= $3
    group by posting.contract_id, posting.event_id)
  select ${EVENT}, moved.contract_id as "contractId", moved.cents,
    (select min(memo.number) from credit_memo as memo where memo.department_id = $1 and memo.event_id = event.id) as "memoNumber"
  from moved join ledger_event as event on event.department_id = $1 and event.id = moved.event_id
  where moved.cents <> 0 order by ${IN_ORDER}`;

/** The latest statement of each contract. */
export const LATEST = `select distinct on (contract_id) contract_id as "contractId", id, number, content_digest as "contentDigest"
  from performance_statement where department_id = $1 and contract_id = any($2::uuid[]) order by contract_id, number desc`;
