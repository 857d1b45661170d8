/** Nights with something to sign off (a game that was not called off, or anything logged) that nobody signed off yet. */
const NOT_SIGNED_OFF = `not exists (select from sign_off where sign_off.department_id = $1 and sign_off.night_id = night.id)
  and (exists (select from log_entry where log_entry.department_id = $1 and log_entry.night_id = night.id)
    or exists (select from game_night join game on game.department_id = $1 and game.id = game_night.game_id
      where game_night.department_id = $1 and game_night.night_id = night.id and game.status not in ('cancelled', 'postponed')))`;

/** One row for each month that has events or closed: `$1` the department. */
export const MONTHS = `
  select month, sum(events)::int as events, sum(nights)::int as nights from (
    select date_trunc('month', booked_on)::date as month, count(*) as events, 0 as nights from ledger_event where department_id = $1 group by 1
    union all
    select date_trunc('month', held_on)::date, 0, count(*) from night where department_id = $1 and ${NOT_SIGNED_OFF} group by 1) as counted
  group by month order by month`;

export const CLOSES = `
  select month_close.month, month_close.recorded_at as "closedAt", person.name as "closedByName", coalesce(late_nights, '[]'::jsonb) as "lateNights"
    from month_close left join person on person.id = month_close.closed_by_person_id
   where month_close.department_id = $1`;

/** `$2` the first and `$3` the last day. */
export const LATE_NIGHTS = `
  select night.id, (select count(*)::int from placement where placement.department_id = $1 and placement.night_id = night.id) as planned,
    (select count(*)::int from log_entry as read where read.department_id = $1 and read.night_id = night.id and read.kind = 'read'
      and not exists (select from log_entry as undo where undo.department_id = $1 and undo.takes_back_entry_id = read.id)) as logged
  from night where department_id = $1 and held_on between $2 and $3 and ${NOT_SIGNED_OFF} order by held_on, id limit 500`;

const moved = (account: string, key: string) => `
  select ${key} as key, sum(case when to_account = '${account}' then amount else -amount end) as amount from posting
   where department_id = $1 and journal = 'money' and effective_on <= $2 and (to_account = '${account}' or from_account = '${account}') group by ${key}`;

/** `$2` the last day of the month. What lay in the drawer, what no invoice took yet, what was earned and not billed, on that day. */
export const CAUTIONS = `
  select 'undeposited' as kind, count(*)::int as count, coalesce(sum(amount_cents), 0)::bigint as "amountCents" from payment
   where department_id = $1 and drawer = 'undepositedReceipts' and received_on <= $2
     and not exists (select from payment_return where payment_return.department_id = $1 and payment_return.payment_id = payment.id)
     and not exists (select from deposit_slip_line join deposit_slip on deposit_slip.department_id = $1 and deposit_slip.id = deposit_slip_line.deposit_slip_id
       where deposit_slip_line.department_id = $1 and deposit_slip_line.payment_id = payment.id and deposit_slip.deposited_on <= $2)
  union all
  select 'unapplied', count(*)::int, coalesce(sum(-amount), 0)::bigint from (${moved('2150', 'unapplied_id')}) as credit where amount < 0
  union all
  select 'unbilled', count(*)::int, coalesce(sum(amount), 0)::bigint from (${moved('2100', 'contract_id')}) as balance where amount > 0`;
