import { Controller, Get, Inject, Param, StreamableFile } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { NeedsLink } from '../../access/needs.ts';
import { TheLinkVisitor } from '../../access/visitor.ts';
import type { LinkVisitor } from '../../access/visitor.ts';
import { OutsideUnit } from '../../platform/http/unit.interceptor.ts';
import { OwnPapers } from './own-papers.service.ts';
import type { Paper } from './own-papers.service.ts';

/** The papers of the sponsor whose link it is. */
@ApiTags('reports')
@Controller('api/sponsor-page')
@OutsideUnit()
export class OwnPapersController {
  constructor(@Inject(OwnPapers) private readonly papers: OwnPapers) {}

  @Get('invoices/:invoiceId/invoice.pdf')
  @NeedsLink('see own money')
  async invoice(@TheLinkVisitor() visitor: LinkVisitor, @Param('invoiceId') invoiceId: string): Promise<StreamableFile> {
    return answerOf(await this.papers.invoice(visitor.subjectId, invoiceId));
  }

  @Get('credit-memos/:memoId/credit-memo.pdf')
  @NeedsLink('see own money')
  async creditMemo(@TheLinkVisitor() visitor: LinkVisitor, @Param('memoId') memoId: string): Promise<StreamableFile> {
    return answerOf(await this.papers.creditMemo(visitor.subjectId, memoId));
  }

  @Get('account-statement.pdf')
  @NeedsLink('see own money')
  async account(@TheLinkVisitor() visitor: LinkVisitor): Promise<StreamableFile> {
    return answerOf(await this.papers.account(visitor.subjectId));
  }
}

function answerOf({ bytes, name }: Paper): StreamableFile {
  return new StreamableFile(bytes, { type: 'application/pdf', disposition: `inline; filename="${name}"`, length: bytes.length });
}
