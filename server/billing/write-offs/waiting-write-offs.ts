/** Requests that nobody answered yet, of invoices that are still open. */
export const WAITING_WRITE_OFFS = `select asked.id, asked.invoice_id as "invoiceId", invoice.number as "invoiceNumber", coalesce(sponsor.name, payer.name) as "sponsorName",
    asked.amount_cents as "amountCents", standing.balance_cents as "balanceCents", asked.happened_on as "askedOn", asked.recorded_by_person_id as "askedByPersonId",
    person.name as "askedBy", asked.reason
  from write_off as asked
    join invoice on invoice.department_id = asked.department_id and invoice.id = asked.invoice_id
    join invoice_standing as standing on standing.department_id = asked.department_id and standing.invoice_id = asked.invoice_id
    join payer on payer.department_id = invoice.department_id and payer.id = invoice.payer_id
    left join sponsor on sponsor.department_id = invoice.department_id and sponsor.id = invoice.sponsor_id
    left join person on person.id = asked.recorded_by_person_id
  where asked.department_id = $1 and asked.step = 'asked' and not standing.is_void
    and not exists (select from write_off as answer where answer.department_id = $1 and answer.answers_write_off_id = asked.id)`;
