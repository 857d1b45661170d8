/** An invoice keeps the sponsor it was issued to; `$2` is the sponsor. The same rule as on its account statement. */
const INVOICE_FROM = `from invoice
    join payer on payer.department_id = invoice.department_id and payer.id = invoice.payer_id
    join seller on seller.department_id = invoice.department_id and seller.id = invoice.seller_id
    join invoice_standing as standing on standing.department_id = invoice.department_id and standing.invoice_id = invoice.id
    left join contract on contract.department_id = invoice.department_id and contract.id = invoice.contract_id
   where invoice.department_id = $1 and coalesce(invoice.sponsor_id, payer.sponsor_id) = $2`;

const applied = (by: 'payment_id' | 'credit_memo_id'): string => `(select coalesce(sum(used.amount_cents), 0)::bigint from application as used
    where used.department_id = invoice.department_id and used.invoice_id = invoice.id and used.${by} is not null)`;

export const INVOICES = `select invoice.id, invoice.number, invoice.kind, invoice.seller_id as "sellerId", contract.title as "contractTitle",
    invoice.issued_on as "issuedOn", invoice.due_on as "dueOn", invoice.tax_cents as "taxCents", invoice.gross_cents as "grossCents",
    standing.balance_cents as "balanceCents", standing.is_void as "isVoid", standing.applied_cents as "appliedCents",
    standing.discount_cents as "discountCents", standing.written_off_cents as "writtenOffCents",
    ${applied('payment_id')} as "paidCents", ${applied('credit_memo_id')} as "creditedCents"
  ${INVOICE_FROM} order by invoice.issued_on desc, invoice.number desc`;

/** What was credited while the contract was another's, or on another's invoice, stays with that one. */
const MEMO_FROM = `from credit_memo as memo
    join payer on payer.department_id = memo.department_id and payer.id = memo.payer_id
    join seller on seller.department_id = memo.department_id and seller.id = memo.seller_id
    join credit_standing as standing on standing.department_id = memo.department_id and standing.credit_id = memo.id
    left join invoice on invoice.department_id = memo.department_id and invoice.id = memo.invoice_id
    left join contract on contract.department_id = memo.department_id and contract.id = memo.contract_id
   where memo.department_id = $1 and coalesce(invoice.sponsor_id, contract.sponsor_id, payer.sponsor_id) = $2
     and not exists (select from credit_memo_line as line join invoice as credited on credited.department_id = line.department_id and credited.id = line.invoice_id
       where line.department_id = memo.department_id and line.credit_memo_id = memo.id and credited.sponsor_id <> $2)
     and (memo.invoice_id is not null or not exists (select from contract_assignment as handed
       where handed.department_id = memo.department_id and handed.contract_id = memo.contract_id and handed.recorded_at > memo.recorded_at))`;

export const CREDITS = `select memo.id, memo.number, memo.seller_id as "sellerId", memo.issued_on as "issuedOn", memo.gross_cents as "grossCents",
    standing.left_cents as "leftCents" ${MEMO_FROM} order by memo.issued_on desc, memo.number desc`;

/** A payment that was recorded by mistake was never the sponsor's. */
export const PAYMENTS = `select payment.id, payment.number, payment.seller_id as "sellerId", payment.received_on as "receivedOn", payment.method, payment.reference,
    payment.amount_cents as "amountCents", standing.left_cents as "leftCents", back.returned_on as "cameBackOn"
  from payment
    join payer on payer.department_id = payment.department_id and payer.id = payment.payer_id
    join credit_standing as standing on standing.department_id = payment.department_id and standing.credit_id = payment.id
    left join payment_return as back on back.department_id = payment.department_id and back.payment_id = payment.id
   where payment.department_id = $1 and payer.sponsor_id = $2 and back.kind is distinct from 'mistake'
   order by payment.received_on desc, payment.number desc`;

export const OWN_INVOICE = `select invoice.id ${INVOICE_FROM} and invoice.id = $3`;
export const OWN_CREDIT = `select memo.id ${MEMO_FROM} and memo.id = $3`;
