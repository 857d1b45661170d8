import { Inject, Injectable } from '@nestjs/common';
import type { InvoiceFacts } from '../domain/billing/invoice.ts';
import type { Cause } from '../domain/billing/not-before.ts';
import { refuse } from '../domain/refusals.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';

export type InvoiceStanding = Required<Pick<InvoiceFacts, 'grossCents' | 'appliedCents' | 'discountCents' | 'writtenOffCents' | 'isVoid'>> & { balanceCents: number };

/** What a payment or a credit memo has been used for, in cents. */
export interface CreditStanding {
  amountCents: number;
  appliedCents: number;
  refundedCents: number;
  isReturned: boolean;
  leftCents: number;
}

const CAUSES = `select 'invoice ' || number as what, issued_on as "on" from invoice where department_id = $1 and id = any($2::uuid[])
  union all select 'payment ' || number, received_on from payment where department_id = $1 and id = any($2::uuid[])
  union all select 'credit memo ' || number, issued_on from credit_memo where department_id = $1 and id = any($2::uuid[])`;

/** How a document stands at this moment. Whoever decides by it holds the document's lock first. */
@Injectable()
export class Standings {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /** @throws Refused `unknown-invoice` */
  async invoice(invoiceId: string): Promise<InvoiceStanding> {
    const [row] = await this.work.sql<InvoiceStanding>(
      `select gross_cents as "grossCents", applied_cents as "appliedCents", discount_cents as "discountCents", written_off_cents as "writtenOffCents",
              is_void as "isVoid", balance_cents as "balanceCents" from invoice_standing where department_id = $1 and invoice_id = $2`,
      [invoiceId],
    );
    return row ?? refuse('unknown-invoice');
  }

  /**
   * Of a payment or of a credit memo, by its id.
   *
   * @throws Refused `not-found`
   */
  async credit(creditId: string): Promise<CreditStanding> {
    const [row] = await this.work.sql<CreditStanding>(
      `select amount_cents as "amountCents", applied_cents as "appliedCents", refunded_cents as "refundedCents", is_returned as "isReturned",
              left_cents as "leftCents" from credit_standing where department_id = $1 and credit_id = $2`,
      [creditId],
    );
    return row ?? refuse('not-found');
  }

  /** The days of these invoices, payments and memos: what is done about them lies no earlier. */
  async causes(documentIds: readonly string[]): Promise<Cause[]> {
    return this.work.sql<Cause>(CAUSES, [documentIds]);
  }
}
