import { Body, Controller, Get, Inject, Param, Post, Put } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import { TheVisitor } from '../../access/visitor.ts';
import type { Visitor } from '../../access/visitor.ts';
import { MovesMoney } from '../../platform/http/unit.interceptor.ts';
import { IfMatch } from '../../platform/http/version.ts';
import { GoodsShortage } from './goods-shortage.service.ts';
import { GoodsViews } from './goods-view.service.ts';
import { GoodsDeliveryDto, GoodsPromisesDto, GoodsShortageDto } from './goods.dto.ts';
import type { GoodsView } from './goods.dto.ts';
import { GoodsService } from './goods.service.ts';

@ApiTags('billing')
@Controller('api/contracts')
export class GoodsController {
  constructor(
    @Inject(GoodsViews) private readonly views: GoodsViews,
    @Inject(GoodsService) private readonly goods: GoodsService,
    @Inject(GoodsShortage) private readonly shortage: GoodsShortage,
  ) {}

  /** What the sponsor pays with, what of it came, what is missing. */
  @Get(':id/goods-promises')
  @Needs('see contracts')
  async one(@Param('id') id: string): Promise<GoodsView> {
    return this.views.one(id);
  }

  @Put(':id/goods-promises')
  @Needs('change contracts')
  async promise(@Param('id') id: string, @IfMatch() version: number, @Body() form: GoodsPromisesDto): Promise<GoodsView> {
    await this.goods.promise(id, version, form);
    return this.views.one(id);
  }

  @Post(':id/goods-deliveries')
  @MovesMoney()
  @Needs('bill')
  async receive(@Param('id') id: string, @Body() form: GoodsDeliveryDto): Promise<GoodsView> {
    await this.goods.receive(id, form);
    return this.views.one(id);
  }

  /** Bills what did not come, or lets it go. */
  @Post(':id/goods-shortage')
  @MovesMoney()
  @Needs('bill')
  async settle(@Param('id') id: string, @Body() form: GoodsShortageDto, @TheVisitor() visitor: Visitor): Promise<GoodsView> {
    await this.shortage.settle(id, form, visitor.roles);
    return this.views.one(id);
  }
}
