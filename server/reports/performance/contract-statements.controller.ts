import { Body, Controller, Get, Inject, Param, Post, Query, StreamableFile } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { OutsideUnit } from '../../platform/http/unit.interceptor.ts';
import { Contract } from '../../sponsorship/contract.entity.ts';
import { IssueStatementDto, ThroughQuery } from './performance.dto.ts';
import type { StatementDraftView, StatementView, WholeStatementView } from './performance.dto.ts';
import { StatementIssuing } from './statement-issuing.service.ts';
import { StatementPrinting } from './statement-printing.service.ts';
import { StatementViews } from './statement-views.service.ts';

@ApiTags('reports')
@Controller('api/contracts/:id')
export class ContractStatementsController {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(StatementViews) private readonly views: StatementViews,
    @Inject(StatementIssuing) private readonly issuing: StatementIssuing,
    @Inject(StatementPrinting) private readonly printing: StatementPrinting,
  ) {}

  @Get('performance-statements')
  @Needs('see money')
  async list(@Param('id') id: string): Promise<Listed<StatementView>> {
    await this.work.one(Contract, id);
    return this.views.list({ contractId: id, sort: '-number', perPage: 100 });
  }

  /** What the next one would say; nothing is given out. */
  @Get('performance-statement-draft')
  @Needs('see money')
  async draft(@Param('id') id: string, @Query() { throughOn }: ThroughQuery): Promise<StatementDraftView> {
    return this.views.draft(id, throughOn);
  }

  @Get('performance-statement-draft.pdf')
  @OutsideUnit()
  @Needs('see money')
  async draftPdf(@Param('id') id: string, @Query() { throughOn }: ThroughQuery): Promise<StreamableFile> {
    const { bytes, name } = await this.printing.draft(id, throughOn);
    return new StreamableFile(bytes, { type: 'application/pdf', disposition: `inline; filename="${name}"`, length: bytes.length });
  }

  @Post('performance-statements')
  @OutsideUnit()
  @Needs('issue statements')
  async issue(@Param('id') id: string, @Body() { throughOn }: IssueStatementDto): Promise<WholeStatementView> {
    const statementId = await this.issuing.issue(id, throughOn);
    return this.work.run(() => this.views.one(statementId));
  }
}
