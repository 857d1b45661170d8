import { Body, Controller, Get, Inject, Param, Post, Query, StreamableFile } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { MovesMoney, OutsideUnit } from '../../platform/http/unit.interceptor.ts';
import { DepositSlipPrinting } from './deposit-slip-printing.service.ts';
import { DepositSlipViews } from './deposit-slip-view.service.ts';
import { DepositSlipDto, DepositSlipListQuery, DrawerQuery } from './deposit-slip.dto.ts';
import type { DepositSlipView, DrawerView, WholeDepositSlipView } from './deposit-slip.dto.ts';
import { DepositSlipService } from './deposit-slip.service.ts';
import { DrawerService } from './drawer.service.ts';

@ApiTags('billing')
@Controller('api')
export class DepositSlipController {
  constructor(
    @Inject(DepositSlipViews) private readonly views: DepositSlipViews,
    @Inject(DepositSlipService) private readonly slips: DepositSlipService,
    @Inject(DepositSlipPrinting) private readonly printing: DepositSlipPrinting,
    @Inject(DrawerService) private readonly drawer: DrawerService,
  ) {}

  /** What was taken in and is not at the bank yet, by seller of record, the oldest first. */
  @Get('drawer')
  @Needs('see money')
  async undeposited(@Query() query: DrawerQuery): Promise<DrawerView> {
    return this.drawer.list(query.sellerId);
  }

  @Get('deposit-slips')
  @Needs('see money')
  async list(@Query() query: DepositSlipListQuery): Promise<Listed<DepositSlipView>> {
    return this.views.list(query);
  }

  @Get('deposit-slips/:id')
  @Needs('see money')
  async one(@Param('id') id: string): Promise<WholeDepositSlipView> {
    return this.views.one(id);
  }

  @Post('deposit-slips')
  @MovesMoney()
  @Needs('record payments')
  async deposit(@Body() form: DepositSlipDto): Promise<WholeDepositSlipView> {
    return this.views.one(await this.slips.deposit(form));
  }

  @Get('deposit-slips/:id/deposit-slip.pdf')
  @OutsideUnit()
  @Needs('see money')
  async pdf(@Param('id') id: string): Promise<StreamableFile> {
    const { bytes, name } = await this.printing.pdf(id);
    return new StreamableFile(bytes, { type: 'application/pdf', disposition: `inline; filename="${name}"`, length: bytes.length });
  }
}
