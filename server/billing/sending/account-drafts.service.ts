import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { creditMemoLetter, receiptLetter, statementLetter } from '../../domain/billing/letters/document-letters.ts';
import { refuse } from '../../domain/refusals.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Payer } from '../../sponsorship/payer.entity.ts';
import { Seller } from '../../sponsorship/seller.entity.ts';
import { Sponsor } from '../../sponsorship/sponsor.entity.ts';
import { CreditMemoViews } from '../credits/credit-memo-view.service.ts';
import { SponsorAccount } from '../statements/sponsor-account.service.ts';
import { paperName } from './draft.ts';
import type { Draft } from './draft.ts';
import { writingOf } from './invoice-drafts.service.ts';
import type { LetterDto } from './message.dto.ts';

interface ReceiptRow {
  number: string;
  fromWhom: string;
  whatFor: string | null;
  takenOn: string;
  amountCents: number;
  method: string;
  reference: string | null;
  sellerId: string;
  payerId: string;
  sponsorId: string | null;
}

const RECEIPT = `select receipt.number, receipt.from_whom as "fromWhom", receipt.what_for as "whatFor", receipt.taken_on as "takenOn", payment.amount_cents as "amountCents",
    payment.method, payment.reference, receipt.seller_id as "sellerId", payment.payer_id as "payerId", payer.sponsor_id as "sponsorId"
  from receipt join payment on payment.department_id = receipt.department_id and payment.id = receipt.payment_id
    join payer on payer.department_id = receipt.department_id and payer.id = payment.payer_id
  where receipt.department_id = $1 and receipt.id = $2`;

/** The letters with a credit memo, a receipt and a sponsor’s account. */
@Injectable()
export class AccountDrafts {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(CreditMemoViews) private readonly memos: CreditMemoViews,
    @Inject(SponsorAccount) private readonly accounts: SponsorAccount,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  async creditMemo(id: string): Promise<Draft> {
    const memo = await this.memos.one(id);
    const { seller, payer } = await this.parties(memo.sellerId, memo.payerId);
    const credited = [...new Set(memo.lines.flatMap((line) => line.invoiceNumber ?? []))];
    const letter = creditMemoLetter({ ...memo, creditsNumber: credited.length === 0 ? null : credited.join(', ') }, seller, writingOf(await this.departments.here()));
    return { ...letter, ...between(seller, payer), kind: 'creditMemo', aboutId: id, sponsorId: memo.sponsorId ?? payer.sponsorId, attachments: [{ kind: 'creditMemo', aboutId: id, name: paperName(memo.number) }], which: [] };
  }

  async receipt(id: string): Promise<Draft> {
    const [row] = isId(id) ? await this.work.sql<ReceiptRow>(RECEIPT, [id]) : [];
    if (!row) return refuse('not-found');
    const { seller, payer } = await this.parties(row.sellerId, row.payerId);
    const how = [row.method === 'transfer' ? 'bank transfer' : row.method, row.reference].filter(Boolean).join(' ');
    const letter = receiptLetter({ ...row, how }, seller, writingOf(await this.departments.here()));
    return { ...letter, ...between(seller, payer), kind: 'receipt', aboutId: id, sponsorId: row.sponsorId, attachments: [{ kind: 'receipt', aboutId: id, name: paperName(row.number) }], which: [] };
  }

  /** From the first day of the fiscal year to today, where no days are named; of all sellers of record, so the department signs. */
  async statement({ aboutId, from: first, to: last }: LetterDto): Promise<Draft> {
    const { sponsorName, from, to, sellers } = await this.accounts.statement(aboutId, { ...(first ? { from: first } : {}), ...(last ? { to: last } : {}) });
    const sponsor = await this.work.one(Sponsor, aboutId);
    const [payer] = await this.work.find(Payer, { sponsorId: aboutId }, { order: { name: 'ASC' } });
    const department = await this.departments.here();
    const openCents = sellers.reduce((sum, seller) => sum + seller.openCents, 0);
    const letter = statementLetter({ sponsorName, from, to, openCents }, { name: department.name }, writingOf(department));
    const name = paperName(`account-${sponsorName.normalize('NFKD').replace(/[^A-Za-z0-9]+/g, '-').replace(/^-+|-+$/g, '')}-${to}`);
    return {
      ...letter,
      kind: 'statement',
      aboutId,
      sponsorId: sponsor.id,
      payerId: payer?.id ?? null,
      toName: sponsor.name,
      toAddress: payer?.email ?? sponsor.email,
      fromName: department.name,
      replyTo: null,
      attachments: [{ kind: 'statement', aboutId, name, from, to }],
      which: [from, to],
    };
  }

  private async parties(sellerId: string, payerId: string): Promise<{ seller: Seller; payer: Payer }> {
    return { seller: await this.work.one(Seller, sellerId), payer: await this.work.one(Payer, payerId) };
  }
}

function between(seller: Seller, payer: Payer) {
  return { payerId: payer.id, toName: payer.name, toAddress: payer.email, fromName: seller.name, replyTo: seller.contactEmail };
}
