import { Controller, Get, Inject, Param, StreamableFile } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { NeedsLink } from '../../access/needs.ts';
import { TheLinkVisitor } from '../../access/visitor.ts';
import type { LinkVisitor } from '../../access/visitor.ts';
import { refuse } from '../../domain/refusals.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { OutsideUnit } from '../../platform/http/unit.interceptor.ts';
import type { OwnStatementView } from './performance.dto.ts';
import { StatementPrinting } from './statement-printing.service.ts';
import { StatementViews } from './statement-views.service.ts';

/** The statements of performance that were issued to the sponsor whose link it is. */
@ApiTags('reports')
@Controller('api/sponsor-page/performance-statements')
export class OwnStatementsController {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(StatementViews) private readonly views: StatementViews,
    @Inject(StatementPrinting) private readonly printing: StatementPrinting,
  ) {}

  @Get()
  @NeedsLink('see own money')
  async list(@TheLinkVisitor() visitor: LinkVisitor): Promise<Listed<OwnStatementView>> {
    const data = await this.views.ofSponsor(visitor.subjectId);
    return { data, total: data.length };
  }

  /** Another sponsor's answers as one that never was. */
  @Get(':statementId/statement.pdf')
  @OutsideUnit()
  @NeedsLink('see own money')
  async pdf(@TheLinkVisitor() visitor: LinkVisitor, @Param('statementId') statementId: string): Promise<StreamableFile> {
    const own = await this.work.run(() => this.views.ofSponsor(visitor.subjectId));
    if (!own.some((one) => one.id === statementId)) refuse('not-found');
    const { bytes, name } = await this.printing.issued(statementId);
    return new StreamableFile(bytes, { type: 'application/pdf', disposition: `inline; filename="${name}"`, length: bytes.length });
  }
}
