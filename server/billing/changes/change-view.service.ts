import { Inject, Injectable } from '@nestjs/common';
import { creditApplied } from '../../domain/billing/payment.ts';
import { writeOffReversed, writeOffUndoneByMemo } from '../../domain/billing/write-off.ts';
import { MONEY } from '../../domain/ledger/account.ts';
import type { Posting } from '../../domain/ledger/posting.ts';
import { centsOf } from '../../domain/money.ts';
import { effectOfChange } from '../../domain/sponsorship/change-effect.ts';
import type { MemoPosition, Position } from '../../domain/sponsorship/position.ts';
import { postingWords } from '../../domain/sponsorship/posting-words.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Payer } from '../../sponsorship/payer.entity.ts';
import { Seller } from '../../sponsorship/seller.entity.ts';
import type { ContractChangeView, MemoPreview } from './change.dto.ts';
import type { Subject } from './change-subjects.service.ts';
import type { PlannedChange } from './contract-changes.service.ts';
import { openCentsOf } from './open-money.service.ts';
import type { OpenDocument } from './open-money.service.ts';

/** A planned change as its page shows it: before and after, and in words what would be posted. */
@Injectable()
export class ChangeViews {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /** @throws Refused as the rules of the happenings do */
  async of(subject: Subject, plan: PlannedChange): Promise<ContractChangeView[]> {
    const others = plan.steps.map((step) => step.subject).filter((one) => one !== subject);
    const views: ContractChangeView[] = [];
    for (const one of new Set([subject, ...others])) views.push(await this.one(one, plan));
    return views;
  }

  private async one(subject: Subject, plan: PlannedChange): Promise<ContractChangeView> {
    const { contract, booked, documents } = subject;
    const { keepsBooksHere } = await this.work.one(Seller, contract.sellerId);
    const payer = (await this.work.one(Payer, contract.payerId)).name;
    const effect = effectOfChange(booked, plan.steps.filter((step) => step.subject === subject).map((step) => step.happening));
    const lineName = (lineId: string) => effect.lines.find((line) => line.lineId === lineId)?.name ?? 'Reads';
    const receivableCents = openCentsOf(documents, 'invoice');
    const applied = keepsBooksHere ? appliedAtOnce(effect.memos, documents) : [];
    const appliedCents = applied.reduce((sum, { from, to, amount }) => sum + (from === MONEY.receivable ? amount : 0) - (to === MONEY.receivable ? amount : 0), 0);
    const postings = [...(keepsBooksHere ? effect.postings : effect.postings.filter((posting) => posting.journal === 'reads')), ...applied];
    return {
      contractId: contract.id,
      number: contract.number,
      title: contract.title,
      lines: effect.lines,
      before: { ...effect.before, receivableCents },
      after: { ...effect.after, receivableCents: receivableCents - appliedCents },
      postings: postings.map(({ journal, from, to, amount }) => ({ journal, from, to, amount })),
      sentences: postingWords(postings, effect.before.contractBalanceCents, { line: lineName, invoice: (id) => numberOf(booked, id), payer }),
      memos: effect.memos.map((memo): MemoPreview => ({
        netCents: memo.netCents,
        taxCents: memo.taxCents,
        grossCents: memo.netCents + memo.taxCents,
        parts: memo.parts.map((part) => ({ invoiceNumber: part.invoiceId ? (numberOf(booked, part.invoiceId) ?? null) : null, netCents: part.netCents, taxCents: part.taxCents })),
      })),
    };
  }
}

/** A memo pays off the invoices it credits, as far as they are open; what was written off of them is undone first. */
function appliedAtOnce(memos: readonly MemoPosition[], documents: readonly OpenDocument[]): Posting[] {
  const open = new Map(documents.map((one) => [one.id, { ...one }]));
  return memos.flatMap(({ memoId, parts }) =>
    parts.flatMap(({ invoiceId = '', netCents, taxCents }) => {
      const invoice = open.get(invoiceId);
      if (!invoice) return [];
      const undoneCents = writeOffUndoneByMemo(netCents + taxCents, invoice.openCents, invoice.writtenOffCents);
      const balanceCents = invoice.openCents + undoneCents;
      const amountCents = centsOf(Math.min(balanceCents, netCents + taxCents));
      const undone = undoneCents > 0 ? writeOffReversed(invoiceId, undoneCents, invoice.writtenOffCents) : [];
      open.set(invoiceId, { ...invoice, openCents: balanceCents - amountCents, writtenOffCents: invoice.writtenOffCents - undoneCents });
      return amountCents > 0 ? [...undone, ...creditApplied({ unappliedId: memoId, invoiceId, amountCents }, amountCents, balanceCents)] : undone;
    }),
  );
}

function numberOf(position: Position, invoiceId: string): string | undefined {
  return position.documents.find((document) => document.invoiceId === invoiceId)?.number;
}
