import { Inject, Injectable } from '@nestjs/common';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { PerformanceSheet } from '../../platform/typesetting/performance-sheet.ts';
import { Typesetter } from '../../platform/typesetting/typesetter.ts';
import type { StatementDraftView } from './performance.dto.ts';
import { StatementViews } from './statement-views.service.ts';

export interface PrintedStatement {
  bytes: Buffer;
  name: string;
  pageCount: number;
  /** null for a draft */
  number: number | null;
}

/** Reads in a short unit, closes it, and only then sets the pages. The same statement is the same bytes, until another overtakes it: then it bears a stamp that names it. */
@Injectable()
export class StatementPrinting {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(StatementViews) private readonly views: StatementViews,
    @Inject(Typesetter) private readonly typesetter: Typesetter,
  ) {}

  /** @throws Refused `not-found` */
  async issued(id: string): Promise<PrintedStatement> {
    const { content, number, issuedOn, sealNumber, sealHead, replacedBy } = await this.work.run(() => this.views.stored(id));
    return this.print({ content, issued: { number, issuedOn, sealNumber, sealHead }, replacedBy }, issuedOn);
  }

  /** Without number and seal. @throws Refused `not-found`, `statement-before-signing` */
  async draft(contractId: string, throughOn: string | null | undefined): Promise<PrintedStatement> {
    return this.read(await this.work.run(() => this.views.draft(contractId, throughOn)));
  }

  /** A draft that is read already. */
  async read({ content, throughOn }: StatementDraftView): Promise<PrintedStatement> {
    return this.print({ content, issued: null, replacedBy: null }, throughOn);
  }

  private async print(sheet: PerformanceSheet, madeOn: string): Promise<PrintedStatement> {
    const { pdf, pageCount } = await this.typesetter.set('performance', sheet, Date.parse(`${madeOn}T12:00:00Z`) / 1000);
    const { contractNumber, contractTitle, sponsorName } = sheet.content.head;
    const plain = (text: string): string => text.normalize('NFKD').replace(/[^A-Za-z0-9]+/g, '-').replace(/^-+|-+$/g, '');
    const number = sheet.issued?.number ?? null;
    return { bytes: pdf, name: `performance-${plain(sponsorName)}-${plain(contractNumber ?? contractTitle)}-${number ?? 'draft'}.pdf`, pageCount, number };
  }
}
