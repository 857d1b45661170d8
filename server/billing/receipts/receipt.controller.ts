import { Body, Controller, Get, Inject, Param, Post, Query, StreamableFile } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import { TheVisitor } from '../../access/visitor.ts';
import type { Visitor } from '../../access/visitor.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { MovesMoney, OutsideUnit } from '../../platform/http/unit.interceptor.ts';
import { ReceiptPrinting } from './receipt-printing.service.ts';
import { ReceiptViews } from './receipt-view.service.ts';
import { ReceiptDto, ReceiptListQuery } from './receipt.dto.ts';
import type { ReceiptPartiesView, ReceiptView } from './receipt.dto.ts';
import { ReceiptService } from './receipt.service.ts';

@ApiTags('billing')
@Controller('api')
export class ReceiptController {
  constructor(
    @Inject(ReceiptViews) private readonly views: ReceiptViews,
    @Inject(ReceiptService) private readonly receipts: ReceiptService,
    @Inject(ReceiptPrinting) private readonly printing: ReceiptPrinting,
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
  ) {}

  @Get('receipts')
  @Needs('take receipts')
  async list(@Query() query: ReceiptListQuery, @TheVisitor() visitor: Visitor): Promise<Listed<ReceiptView>> {
    return this.views.list(query, visitor.roles);
  }

  /** Sellers of record and payers by name, to write a receipt with. */
  @Get('receipt-parties')
  @Needs('take receipts')
  async parties(): Promise<ReceiptPartiesView> {
    return this.views.parties();
  }

  @Get('receipts/:id')
  @Needs('take receipts')
  async one(@Param('id') id: string, @TheVisitor() visitor: Visitor): Promise<ReceiptView> {
    return this.views.one(id, visitor.roles);
  }

  @Post('receipts')
  @MovesMoney()
  @Needs('take receipts')
  async take(@Body() form: ReceiptDto, @TheVisitor() visitor: Visitor): Promise<ReceiptView> {
    return this.views.one(await this.receipts.take(form), visitor.roles);
  }

  @Get('receipts/:id/receipt.pdf')
  @OutsideUnit()
  @Needs('take receipts')
  async pdf(@Param('id') id: string, @TheVisitor() visitor: Visitor): Promise<StreamableFile> {
    await this.work.run(() => this.views.one(id, visitor.roles));
    const { bytes, name } = await this.printing.pdf(id);
    return new StreamableFile(bytes, { type: 'application/pdf', disposition: `inline; filename="${name}"`, length: bytes.length });
  }
}
