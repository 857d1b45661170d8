import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../../domain/refusals.ts';
import type { LetterKind } from '../../domain/billing/letters/letter.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Typesetter } from '../../platform/typesetting/typesetter.ts';
import { CreditMemoPrinting } from '../credits/credit-memo-printing.service.ts';
import { InvoicePrinting } from '../invoices/invoice-printing.service.ts';
import { ReceiptPrinting } from '../receipts/receipt-printing.service.ts';
import { AccountStatementPrinting } from '../statements/account-statement-printing.service.ts';
import { Message } from './message.entity.ts';
import type { Attachment } from './message.entity.ts';
import { ThankYouDrafts } from './thank-you-drafts.service.ts';

export interface Paper {
  readonly name: string;
  readonly bytes: Buffer;
}

type Printing = (paper: Attachment, messageId: string) => Promise<{ bytes: Buffer }>;

/** Sets the papers that go with a letter; never inside a unit of work. */
@Injectable()
export class AttachmentPrinting {
  private readonly kinds: Partial<Record<LetterKind, Printing>>;

  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(Typesetter) typesetter: Typesetter,
    @Inject(InvoicePrinting) invoices: InvoicePrinting,
    @Inject(CreditMemoPrinting) memos: CreditMemoPrinting,
    @Inject(ReceiptPrinting) receipts: ReceiptPrinting,
    @Inject(AccountStatementPrinting) accounts: AccountStatementPrinting,
    @Inject(ThankYouDrafts) thanks: ThankYouDrafts,
  ) {
    this.kinds = {
      invoice: ({ aboutId }) => invoices.pdf(aboutId),
      creditMemo: ({ aboutId }) => memos.pdf(aboutId),
      receipt: ({ aboutId }) => receipts.pdf(aboutId),
      statement: ({ aboutId, from, to }) => accounts.pdf(aboutId, { from: from!, to: to! }),
      thankYou: async (_, messageId) => ({ bytes: await typesetter.pdf('letter', await this.work.run(() => thanks.sheetOf(messageId))) }),
    };
  }

  async papersOf(message: Pick<Message, 'id' | 'attachments'>): Promise<Paper[]> {
    const papers: Paper[] = [];
    for (const paper of message.attachments) {
      const printing = this.kinds[paper.kind];
      if (printing) papers.push({ name: paper.name, bytes: (await printing(paper, message.id)).bytes });
    }
    return papers;
  }

  /** The first paper of a letter, to look at. @throws Refused `not-found` where it has none */
  async first(messageId: string): Promise<Paper> {
    const message = await this.work.run(() => this.work.one(Message, messageId));
    const [paper] = await this.papersOf(message);
    return paper ?? refuse('not-found');
  }
}
