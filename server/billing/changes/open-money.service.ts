import { Inject, Injectable } from '@nestjs/common';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';

/** A document of a contract with what is open on it, in cents: of an invoice what is owed, of a credit what is unused. */
export interface OpenDocument {
  id: string;
  kind: 'invoice' | 'payment' | 'memo';
  number: string;
  grossCents: number;
  openCents: number;
}

const balanceBy = (account: string, key: string) => `(select coalesce(sum(case when to_account = '${account}' then amount else -amount end), 0)
    from posting where posting.department_id = $1 and posting.journal = 'money' and '${account}' in (from_account, to_account) and posting.${key} = document.id)::bigint`;

/** A payment belongs to a contract when it is used on invoices of that contract and of no other. */
const DOCUMENTS = `select document.id, 'invoice' as kind, document.number, document.gross_cents as "grossCents", ${balanceBy('1100', 'invoice_id')} as "openCents"
    from invoice as document where document.department_id = $1 and document.contract_id = $2
      and not exists (select from invoice_void where invoice_void.department_id = $1 and invoice_void.invoice_id = document.id)
  union all
  select document.id, 'payment', document.number, document.amount_cents, -${balanceBy('2150', 'unapplied_id')}
    from payment as document where document.department_id = $1
      and exists (select from application join invoice on invoice.department_id = $1 and invoice.id = application.invoice_id
        where application.department_id = $1 and application.payment_id = document.id and invoice.contract_id = $2
        group by invoice.id having sum(application.amount_cents) > 0)
      and not exists (select from application join invoice on invoice.department_id = $1 and invoice.id = application.invoice_id
        where application.department_id = $1 and application.payment_id = document.id and invoice.contract_id is distinct from $2
        group by invoice.id having sum(application.amount_cents) > 0)
  union all
  select document.id, 'memo', document.number, document.gross_cents, -${balanceBy('2150', 'unapplied_id')}
    from credit_memo as document where document.department_id = $1 and document.id = any($3::uuid[])`;

/** What is open on the documents of a contract, by the journal. */
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
