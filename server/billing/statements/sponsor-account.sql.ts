/** `$2` the sponsor, `$3` the last day. An invoice keeps the sponsor it was issued to; a payment is its payer's sponsor's. */
const OWN = `own_invoice as (
    select invoice.id from invoice join payer on payer.department_id = $1 and payer.id = invoice.payer_id
     where invoice.department_id = $1 and coalesce(invoice.sponsor_id, payer.sponsor_id) = $2),
  own_credit as (
    select payment.id from payment join payer on payer.department_id = $1 and payer.id = payment.payer_id
     where payment.department_id = $1 and payer.sponsor_id = $2
    union all
    select memo.id from credit_memo as memo join payer on payer.department_id = $1 and payer.id = memo.payer_id
        left join invoice on invoice.department_id = $1 and invoice.id = memo.invoice_id
        left join contract on contract.department_id = $1 and contract.id = memo.contract_id
     where memo.department_id = $1 and coalesce(invoice.sponsor_id, contract.sponsor_id, payer.sponsor_id) = $2)`;

const moves = (account: string) => `case when to_account = '${account}' then amount when from_account = '${account}' then -amount else 0 end`;

/** What each event changed of what the sponsor owes; an application moves nothing unless one side of it is somebody else's. */
export const MOVED = `with ${OWN}, moved as (
    select event_id, seller_id, sum(cents) as cents from (
      select event_id, seller_id, ${moves('1100')} as cents from posting
       where department_id = $1 and journal = 'money' and occurred_on <= $3 and invoice_id in (select id from own_invoice)
      union all
      select event_id, seller_id, ${moves('2150')} from posting
       where department_id = $1 and journal = 'money' and occurred_on <= $3 and unapplied_id in (select id from own_credit)) as both_sides
    group by event_id, seller_id having sum(cents) <> 0)
  select event.id as "eventId", event.happening, event.cause, event.cause_id as "causeId", event.occurred_on as "occurredOn", event.booked_on as "bookedOn",
    moved.cents, moved.seller_id as "sellerId", seller.name as "sellerName",
    (select min(memo.number) from credit_memo as memo where memo.department_id = $1 and memo.event_id = event.id) as "memoNumber"
  from moved join ledger_event as event on event.department_id = $1 and event.id = moved.event_id
    join seller on seller.department_id = $1 and seller.id = moved.seller_id
  order by seller.name collate "und-x-icu", event.occurred_on, event.recorded_at, event.id`;

/** What is open on each of the sponsor's invoices at the end of `$3`. */
export const OPEN = `with ${OWN}
  select invoice.seller_id as "sellerId", invoice.issued_on as "issuedOn", invoice.due_on as "dueOn", sum(${moves('1100')}) as "balanceCents"
    from posting join invoice on invoice.department_id = $1 and invoice.id = posting.invoice_id
   where posting.department_id = $1 and journal = 'money' and occurred_on <= $3 and posting.invoice_id in (select id from own_invoice)
   group by invoice.department_id, invoice.id having sum(${moves('1100')}) <> 0`;

/** Credit not applied yet at the end of `$3`. */
export const CREDITS = `with ${OWN}
  select seller_id as "sellerId", -sum(${moves('2150')}) as cents from posting
   where department_id = $1 and journal = 'money' and occurred_on <= $3 and unapplied_id in (select id from own_credit) group by seller_id`;
