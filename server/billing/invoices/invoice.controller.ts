import { Body, Controller, Get, HttpCode, Inject, Param, Post, Query, StreamableFile } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { MovesMoney, OutsideUnit } from '../../platform/http/unit.interceptor.ts';
import { InvoiceIssuing } from './invoice-issuing.service.ts';
import { InvoicePrinting } from './invoice-printing.service.ts';
import { InvoiceStory } from './invoice-story.service.ts';
import { InvoiceViews } from './invoice-view.service.ts';
import { InvoiceVoiding } from './invoice-voiding.service.ts';
import { IssueInvoiceDto, InvoiceListQuery, VoidInvoiceDto } from './invoice.dto.ts';
import type { InvoiceStoryView, InvoiceView, WholeInvoiceView } from './invoice.dto.ts';

@ApiTags('billing')
@Controller('api/invoices')
export class InvoiceController {
  constructor(
    @Inject(InvoiceViews) private readonly views: InvoiceViews,
    @Inject(InvoiceIssuing) private readonly issuing: InvoiceIssuing,
    @Inject(InvoiceVoiding) private readonly voiding: InvoiceVoiding,
    @Inject(InvoiceStory) private readonly story: InvoiceStory,
    @Inject(InvoicePrinting) private readonly printing: InvoicePrinting,
  ) {}

  @Get()
  @Needs('see money')
  async list(@Query() query: InvoiceListQuery): Promise<Listed<InvoiceView>> {
    return this.views.list(query);
  }

  @Get(':id')
  @Needs('see money')
  async one(@Param('id') id: string): Promise<WholeInvoiceView> {
    return this.views.one(id);
  }

  @Get(':id/story')
  @Needs('see money')
  async tellStory(@Param('id') id: string): Promise<InvoiceStoryView> {
    return this.story.tell(id);
  }

  @Post()
  @MovesMoney()
  @Needs('bill')
  async issue(@Body() form: IssueInvoiceDto): Promise<WholeInvoiceView> {
    return this.views.one(await this.issuing.issue(form));
  }

  @Post(':id/void')
  @HttpCode(200)
  @MovesMoney()
  @Needs('bill')
  async voidInvoice(@Param('id') id: string, @Body() form: VoidInvoiceDto): Promise<WholeInvoiceView> {
    await this.voiding.voidInvoice(id, form);
    return this.views.one(id);
  }

  @Get(':id/invoice.pdf')
  @OutsideUnit()
  @Needs('see money')
  async pdf(@Param('id') id: string): Promise<StreamableFile> {
    const { bytes, name } = await this.printing.pdf(id);
    return new StreamableFile(bytes, { type: 'application/pdf', disposition: `inline; filename="${name}"`, length: bytes.length });
  }
}
