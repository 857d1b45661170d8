import { Inject, Injectable } from '@nestjs/common';
import { CreditMemoPrinting } from '../../billing/credits/credit-memo-printing.service.ts';
import { InvoicePrinting } from '../../billing/invoices/invoice-printing.service.ts';
import { AccountStatementPrinting } from '../../billing/statements/account-statement-printing.service.ts';
import { refuse } from '../../domain/refusals.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { OWN_CREDIT, OWN_INVOICE } from './own-documents.sql.ts';

export interface Paper {
  bytes: Buffer;
  name: string;
}

/** A sponsor's own papers; another's answers as one that never was. */
@Injectable()
export class OwnPapers {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(InvoicePrinting) private readonly invoices: InvoicePrinting,
    @Inject(CreditMemoPrinting) private readonly memos: CreditMemoPrinting,
    @Inject(AccountStatementPrinting) private readonly accounts: AccountStatementPrinting,
  ) {}

  /** @throws Refused `not-found` */
  async invoice(sponsorId: string, invoiceId: string): Promise<Paper> {
    await this.refuseForeign(OWN_INVOICE, sponsorId, invoiceId);
    return this.invoices.pdf(invoiceId);
  }

  /** @throws Refused `not-found` */
  async creditMemo(sponsorId: string, memoId: string): Promise<Paper> {
    await this.refuseForeign(OWN_CREDIT, sponsorId, memoId);
    return this.memos.pdf(memoId);
  }

  /** From the first day of the fiscal year through today. */
  async account(sponsorId: string): Promise<Paper> {
    return this.accounts.pdf(sponsorId, {});
  }

  private async refuseForeign(sql: string, sponsorId: string, id: string): Promise<void> {
    const found = isId(id) ? await this.work.run(() => this.work.sql(sql, [sponsorId, id])) : [];
    if (found.length === 0) refuse('not-found');
  }
}
