import { Controller, Get, Inject, Param, Query, StreamableFile } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { Cell } from '../../platform/files/cell.ts';
import { answerIn } from '../../platform/files/file-answer.ts';
import type { ReportTable } from '../../platform/files/file-answer.ts';
import { OutsideUnit } from '../../platform/http/unit.interceptor.ts';
import { AccountStatementPrinting } from './account-statement-printing.service.ts';
import { SponsorAccountQuery, StatementSpanQuery } from './sponsor-account.dto.ts';
import type { SponsorAccountView } from './sponsor-account.dto.ts';
import { SponsorAccount } from './sponsor-account.service.ts';

@ApiTags('billing')
@Controller('api/sponsors/:id')
@OutsideUnit()
export class SponsorAccountController {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(SponsorAccount) private readonly accounts: SponsorAccount,
    @Inject(AccountStatementPrinting) private readonly printing: AccountStatementPrinting,
  ) {}

  @Get('account-statement')
  @Needs('see money')
  async account(@Param('id') id: string, @Query() query: SponsorAccountQuery): Promise<SponsorAccountView | StreamableFile> {
    return answerIn(query.format, await this.work.run(() => this.accounts.statement(id, query)), tableOf);
  }

  @Get('account-statement.pdf')
  @Needs('see money')
  async pdf(@Param('id') id: string, @Query() query: StatementSpanQuery): Promise<StreamableFile> {
    const { bytes, name } = await this.printing.pdf(id, query);
    return new StreamableFile(bytes, { type: 'application/pdf', disposition: `inline; filename="${name}"`, length: bytes.length });
  }
}

function tableOf(view: SponsorAccountView): ReportTable {
  const rows: Cell[][] = [['Seller of record', 'Day', 'What happened', 'Document', 'Charges', 'Payments and credits', 'Balance']];
  for (const seller of view.sellers) {
    rows.push([seller.sellerName, { day: view.from }, 'Opening balance', null, null, null, { cents: seller.openingCents }]);
    for (const { on, sentence, document, chargeCents, creditCents, balanceCents } of seller.lines) {
      rows.push([seller.sellerName, { day: on }, sentence, document?.label ?? null, { cents: chargeCents }, { cents: creditCents }, { cents: balanceCents }]);
    }
    rows.push([seller.sellerName, { day: view.to }, 'Closing balance', null, null, null, { cents: seller.closingCents }]);
  }
  return { fileName: `account-${view.sponsorName}-${view.from}-${view.to}`, sheetName: `Account ${view.to}`, rows, totalRows: 0 };
}
