import { Body, Controller, HttpCode, Inject, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/needs.ts';
import type { Day } from '../domain/day.ts';
import { MovesMoney } from '../platform/http/unit.interceptor.ts';
import { ContractHappenings } from './contract-happenings.service.ts';
import { ContractViews } from './contract-view.service.ts';
import type { ContractView } from './contract-view.ts';
import { DeliveryDto, EarnedThroughDto, GoodsDto, SignContractDto } from './contract.dto.ts';

@ApiTags('sponsorship')
@Controller('api/contracts/:id')
export class ContractHappeningsController {
  constructor(
    @Inject(ContractHappenings) private readonly happenings: ContractHappenings,
    @Inject(ContractViews) private readonly views: ContractViews,
  ) {}

  @Post('sign')
  @HttpCode(200)
  @MovesMoney()
  @Needs('sign contracts')
  async sign(@Param('id') id: string, @Body() form: SignContractDto): Promise<ContractView> {
    await this.happenings.sign(id, { ...form, signedOn: form.signedOn as Day });
    return this.views.one(id);
  }

  @Post('goods')
  @HttpCode(200)
  @MovesMoney()
  @Needs('bill')
  async receiveGoods(@Param('id') id: string, @Body() form: GoodsDto): Promise<ContractView> {
    await this.happenings.receiveGoods(id, form);
    return this.views.one(id);
  }

  @Post('benefits/:benefitId/deliveries')
  @MovesMoney()
  @Needs('change contracts')
  async deliver(@Param('id') id: string, @Param('benefitId') benefitId: string, @Body() form: DeliveryDto): Promise<ContractView> {
    await this.happenings.deliver(id, benefitId, form);
    return this.views.one(id);
  }

  @Post('benefits/:benefitId/earned')
  @HttpCode(200)
  @MovesMoney()
  @Needs('change contracts')
  async earnThrough(@Param('id') id: string, @Param('benefitId') benefitId: string, @Body() form: EarnedThroughDto): Promise<ContractView> {
    await this.happenings.earnThrough(id, benefitId, form.throughOn as Day);
    return this.views.one(id);
  }
}
