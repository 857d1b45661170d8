import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { AccountSheet } from '../../platform/typesetting/account-sheet.ts';
import { Typesetter } from '../../platform/typesetting/typesetter.ts';
import { Seller } from '../../sponsorship/seller.entity.ts';
import type { SellerAccount, StatementSpanQuery } from './sponsor-account.dto.ts';
import { SponsorAccount } from './sponsor-account.service.ts';

/** Reads in a short unit, closes it, and only then sets the page. */
@Injectable()
export class AccountStatementPrinting {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(SponsorAccount) private readonly accounts: SponsorAccount,
    @Inject(Typesetter) private readonly typesetter: Typesetter,
  ) {}

  /** @throws Refused `not-found`, `ends-before-it-starts` */
  async pdf(sponsorId: string, span: StatementSpanQuery): Promise<{ bytes: Buffer; name: string }> {
    const sheet = await this.work.run(() => this.sheetOf(sponsorId, span));
    const bytes = await this.typesetter.pdf('account', sheet);
    const sponsor = sheet.sponsorName.normalize('NFKD').replace(/[^A-Za-z0-9]+/g, '-').replace(/^-+|-+$/g, '');
    return { bytes, name: `account-${sponsor}-${sheet.toOn}.pdf` };
  }

  private async sheetOf(sponsorId: string, span: StatementSpanQuery): Promise<AccountSheet> {
    const { sponsorName, from, to, buckets, sellers } = await this.accounts.statement(sponsorId, span);
    const { name, locale, currency } = await this.departments.here();
    const remitTo = new Map((await this.work.find(Seller)).map((seller) => [seller.id, seller.remitTo]));
    return {
      departmentName: name,
      sponsorName,
      fromOn: from,
      toOn: to,
      locale,
      currency,
      buckets,
      sellers: sellers.map((seller) => printed(seller, remitTo.get(seller.sellerId) ?? null)),
      note: 'A balance is what is open on invoices less credit that is not applied yet.',
    };
  }
}

function printed({ lines, ...account }: SellerAccount, remitTo: string | null): AccountSheet['sellers'][number] {
  return { ...account, remitTo, lines: lines.map(({ on, sentence, chargeCents, creditCents, balanceCents }) => ({ on, what: sentence, chargeCents, creditCents, balanceCents })) };
}
