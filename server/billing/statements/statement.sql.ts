const READ_ACCOUNTS = ['promised', 'owed', 'given', 'madeGood', 'credited', 'released', 'carried', 'extra'] as const;

/** What an account went up by; `promised` stands on the other side of the entry, so it is turned. */
function change(accounts: readonly string[], turned = false): string {
  const list = accounts.map((account) => `'${account}'`).join(', ');
  const [up, down] = turned ? ['from_account', 'to_account'] : ['to_account', 'from_account'];
  return `sum(case when ${up} in (${list}) then amount else 0 end - case when ${down} in (${list}) then amount else 0 end)`;
}

const column = (name: string): string => `"${name}"`;

const EVENT = `event.id as "eventId", event.happening, event.cause, event.cause_id as "causeId", event.occurred_on as "occurredOn", event.booked_on as "bookedOn"`;

const ORDER = 'event.occurred_on, event.recorded_at, event.id';
const NEWEST_FIRST = 'event.occurred_on desc, event.recorded_at desc, event.id desc';

/** `$2` the contract. One row per happening and commitment, with what it changed and how things stood after it. */
export const DELIVERY = `with moved as (
    select event_id, commitment_id, ${READ_ACCOUNTS.map((name) => `${change([name], name === 'promised')} as ${column(name)}`).join(',\n      ')}
    from posting where department_id = $1 and contract_id = $2 and journal = 'reads' group by event_id, commitment_id)
  select ${EVENT}, moved.commitment_id as "commitmentId",
    ${READ_ACCOUNTS.map((name) => `moved.${column(name)}, sum(moved.${column(name)}) over standing as ${column(`${name}After`)}`).join(',\n    ')}
  from moved join ledger_event as event on event.department_id = $1 and event.id = moved.event_id
  window standing as (partition by moved.commitment_id order by ${ORDER})
  order by ${NEWEST_FIRST}, moved.commitment_id limit 5000`;

/** Name → SQL of the change, in cents, debit above zero; `earned` is turned so that revenue reads as a plus. */
const AMOUNTS: Readonly<Record<string, string>> = {
  toBill: inJournal('agreed', change(['toBill'])),
  billed: inJournal('agreed', change(['billed'])),
  receivable: inJournal('money', change(['1100'])),
  contractBalance: inJournal('money', change(['2100'])),
  unapplied: `coalesce(sum(case when unapplied_id in (select cause_id from own_credits) and to_account = '2150' then amount
      when unapplied_id in (select cause_id from own_credits) and from_account = '2150' then -amount else 0 end) filter (where journal = 'money'), 0)`,
  tax: inJournal('money', change(['2200'], true)),
  earned: inJournal('money', change(['4000', '4010', '4050', '4090'], true)),
};

function inJournal(journal: string, sum: string): string {
  return `coalesce(${sum} filter (where journal = '${journal}'), 0)`;
}

/**
 * `$2` the contract. One row per happening that moved dollars. A credit is shown where it came in on this contract
 * alone; a payment for several contracts is shown by what was applied here.
 */
export const ACCOUNT = `with own_credits as (
    select cause_id from ledger_event where department_id = $1 and contract_id = $2 and happening ->> 'kind' = 'paymentReceived'
    union all select id from credit_memo where department_id = $1 and contract_id = $2),
  moved as (
    select event_id, ${Object.entries(AMOUNTS).map(([name, sql]) => `${sql} as ${column(name)}`).join(',\n      ')}
    from posting where department_id = $1 and contract_id = $2 and journal in ('agreed', 'money') group by event_id)
  select ${EVENT}, ${Object.keys(AMOUNTS).map((name) => `moved.${column(name)}, sum(moved.${column(name)}) over running as ${column(`${name}After`)}`).join(',\n    ')}
  from moved join ledger_event as event on event.department_id = $1 and event.id = moved.event_id
  window running as (order by ${ORDER})
  order by ${NEWEST_FIRST} limit 5000`;

export const READ_ACCOUNT_NAMES = READ_ACCOUNTS;
export const AMOUNT_NAMES = Object.keys(AMOUNTS);
