import { Inject, Injectable } from '@nestjs/common';
import type { LetterKind } from '../../domain/billing/letters/letter.ts';
import { refuse } from '../../domain/refusals.ts';
import { AccountDrafts } from './account-drafts.service.ts';
import type { Draft } from './draft.ts';
import { InvoiceDrafts } from './invoice-drafts.service.ts';
import type { LetterDto } from './message.dto.ts';
import { ThankYouDrafts } from './thank-you-drafts.service.ts';

type Drawing = (form: LetterDto) => Promise<Draft>;

/** Draws up a letter of any kind from what it is about; nothing is kept of it. */
@Injectable()
export class Drafts {
  private readonly kinds: Partial<Record<LetterKind, Drawing>>;

  constructor(@Inject(InvoiceDrafts) invoices: InvoiceDrafts, @Inject(AccountDrafts) accounts: AccountDrafts, @Inject(ThankYouDrafts) thanks: ThankYouDrafts) {
    this.kinds = {
      invoice: ({ aboutId }) => invoices.invoice(aboutId),
      reminder: ({ aboutId }) => invoices.reminder(aboutId, null),
      creditMemo: ({ aboutId }) => accounts.creditMemo(aboutId),
      receipt: ({ aboutId }) => accounts.receipt(aboutId),
      statement: (form) => accounts.statement(form),
      thankYou: ({ aboutId }) => thanks.thankYou(aboutId),
    };
  }

  async draw(form: LetterDto): Promise<Draft> {
    const drawing = this.kinds[form.kind];
    return drawing ? drawing(form) : refuse('not-found');
  }
}
