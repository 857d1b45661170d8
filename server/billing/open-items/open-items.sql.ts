/** `$2` today. Of those who are late, the latest by age. */
export const LATE = `select invoice.id as "invoiceId", invoice.number, invoice.kind, invoice.sponsor_id as "sponsorId", coalesce(sponsor.name, payer.name) as "sponsorName",
    payer.name as "payerName", seller.name as "sellerName", sponsor.contact_name as "contactName", coalesce(payer.email, sponsor.email) as "contactEmail",
    sponsor.phone as "contactPhone", standing.balance_cents as "balanceCents", invoice.due_on as "dueOn", ($2::date - invoice.due_on) as "daysPastDue"
  from invoice
    join invoice_standing as standing on standing.department_id = invoice.department_id and standing.invoice_id = invoice.id
    join payer on payer.department_id = invoice.department_id and payer.id = invoice.payer_id
    join seller on seller.department_id = invoice.department_id and seller.id = invoice.seller_id
    left join sponsor on sponsor.department_id = invoice.department_id and sponsor.id = invoice.sponsor_id
  where invoice.department_id = $1 and invoice.due_on < $2::date and standing.balance_cents > 0
  order by invoice.due_on, invoice.number limit $3`;

/** `$2` today. What is late by its due day, over all of it. */
export const LATE_SUMS = `select invoice.due_on as "dueOn", count(*) as count, sum(standing.balance_cents)::bigint as cents
  from invoice join invoice_standing as standing on standing.department_id = invoice.department_id and standing.invoice_id = invoice.id
  where invoice.department_id = $1 and invoice.due_on < $2::date and standing.balance_cents > 0
  group by invoice.due_on`;

const CREDITS = `select 'payment' as kind, payment.id, payment.number, payment.seller_id, payment.payer_id, payment.received_on as on_day, payment.amount_cents from payment where payment.department_id = $1
  union all
  select 'creditMemo', credit_memo.id, credit_memo.number, credit_memo.seller_id, credit_memo.payer_id, credit_memo.issued_on, credit_memo.gross_cents from credit_memo where credit_memo.department_id = $1`;

/** Payments and memos with something left, and what it could be used on. */
export const UNAPPLIED = `select credit.kind, credit.id as "creditId", credit.number, payer.name as "payerName", sponsor.name as "sponsorName", seller.name as "sellerName",
    credit.on_day as "on", credit.amount_cents as "amountCents", standing.left_cents as "leftCents",
    (select receipt.taken_by_person_id from receipt where receipt.department_id = $1 and receipt.payment_id = credit.id) as "takenByPersonId",
    (select coalesce(jsonb_agg(jsonb_build_object('id', invoice.id, 'number', invoice.number, 'balanceCents', open.balance_cents) order by invoice.due_on, invoice.number), '[]')
       from invoice join invoice_standing as open on open.department_id = $1 and open.invoice_id = invoice.id
      where invoice.department_id = $1 and invoice.seller_id = credit.seller_id and open.balance_cents > 0
        and (invoice.payer_id = credit.payer_id or invoice.sponsor_id = payer.sponsor_id)) as "openInvoices"
  from (${CREDITS}) as credit
    join credit_standing as standing on standing.department_id = $1 and standing.credit_id = credit.id
    join payer on payer.department_id = $1 and payer.id = credit.payer_id
    join seller on seller.department_id = $1 and seller.id = credit.seller_id
    left join sponsor on sponsor.department_id = $1 and sponsor.id = payer.sponsor_id
  where standing.left_cents > 0 order by credit.on_day, credit.number limit $2`;

/** `$2` today. */
export const FIGURES = `select late.count as "lateCount", late.cents as "lateCents", unapplied.count as "unappliedCount", unapplied.cents as "unappliedCents"
  from (select count(*) as count, coalesce(sum(standing.balance_cents), 0)::bigint as cents from invoice
      join invoice_standing as standing on standing.department_id = invoice.department_id and standing.invoice_id = invoice.id
      where invoice.department_id = $1 and invoice.due_on < $2::date and standing.balance_cents > 0) as late,
    (select count(*) as count, coalesce(sum(left_cents), 0)::bigint as cents from credit_standing where department_id = $1 and left_cents > 0) as unapplied`;
