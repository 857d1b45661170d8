import { Inject, Injectable } from '@nestjs/common';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';

/** A document of a contract with what is open on it, in cents: of an invoice what is owed, of a credit what is unused. */
export interface OpenDocument {
  id: string;
  kind: 'invoice' | 'payment' | 'memo';
  number: string;
  grossCents: number;
  openCents: number;
  writtenOffCents: number;
}

const USED = `from application join invoice on invoice.department_id = $1 and invoice.id = application.invoice_id
    where application.department_id = $1 and application.payment_id = payment.id`;

/** A payment belongs to every contract whose invoices it is used on: what is left of it is open on each. */
const DOCUMENTS = `select invoice.id, 'invoice' as kind, invoice.number, standing.gross_cents as "grossCents", standing.balance_cents as "openCents",
      standing.written_off_cents as "writtenOffCents"
    from invoice join invoice_standing as standing on standing.department_id = $1 and standing.invoice_id = invoice.id
    where invoice.department_id = $1 and invoice.contract_id = $2 and not standing.is_void
  union all
  select payment.id, 'payment', payment.number, standing.amount_cents, standing.left_cents, 0
    from payment join credit_standing as standing on standing.department_id = $1 and standing.credit_id = payment.id
    where payment.department_id = $1
      and exists (select ${USED} and invoice.contract_id = $2 group by invoice.id having sum(application.amount_cents) > 0)
  union all
  select credit_memo.id, 'memo', credit_memo.number, standing.amount_cents, standing.left_cents, 0
    from credit_memo join credit_standing as standing on standing.department_id = $1 and standing.credit_id = credit_memo.id
    where credit_memo.department_id = $1 and credit_memo.id = any($3::uuid[])`;

/** What is open on the documents of a contract, as the accounts office has it. */
@Injectable()
export class OpenMoney {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /** @param memoIds the memos that the contract's own ledger knows */
  async of(contractId: string, memoIds: readonly string[]): Promise<OpenDocument[]> {
    return this.work.sql<OpenDocument>(DOCUMENTS, [contractId, memoIds]);
  }
}

/** The sum that is open on documents of these kinds, in cents. */
export function openCentsOf(documents: readonly OpenDocument[], ...kinds: OpenDocument['kind'][]): number {
  return documents.filter((one) => kinds.includes(one.kind)).reduce((sum, one) => sum + one.openCents, 0);
}
