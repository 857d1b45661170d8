import { Body, Controller, HttpCode, Inject, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { DepartmentService } from '../../access/department.service.ts';
import { Needs } from '../../access/needs.ts';
import type { Day } from '../../domain/day.ts';
import { MovesMoney } from '../../platform/http/unit.interceptor.ts';
import { ContractViews } from '../../sponsorship/contract-view.service.ts';
import type { ContractView } from '../../sponsorship/contract-view.ts';
import { Amending } from './amending.service.ts';
import { AmendContractDto, SwapReadsDto, LowerPriceDto, AssignContractDto, CarryReadsDto } from './change.dto.ts';
import type { ChangePreview } from './change.dto.ts';
import { ContractChanges } from './contract-changes.service.ts';
import type { AskedChange } from './contract-changes.service.ts';
import { HandingOn } from './handing-on.service.ts';

/** What is promised, its price, and where its reads go on. Each change can be looked at first. */
@ApiTags('billing')
@Controller('api/contracts/:id')
export class ChangePromiseController {
  constructor(
    @Inject(ContractChanges) private readonly changes: ContractChanges,
    @Inject(Amending) private readonly amending: Amending,
    @Inject(HandingOn) private readonly handing: HandingOn,
    @Inject(ContractViews) private readonly views: ContractViews,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  @Post('amend/preview')
  @HttpCode(200)
  @Needs('sign contracts')
  async previewAmend(@Param('id') id: string, @Body() form: AmendContractDto): Promise<ChangePreview> {
    return this.changes.preview(id, this.amending.amend(form, await this.day(form.on ?? form.amendedOn)));
  }

  @Post('amend')
  @HttpCode(200)
  @MovesMoney()
  @Needs('sign contracts')
  async amend(@Param('id') id: string, @Body() form: AmendContractDto): Promise<ContractView> {
    return this.perform(id, this.amending.amend(form, await this.day(form.on ?? form.amendedOn)));
  }

  @Post('swap/preview')
  @HttpCode(200)
  @Needs('sign contracts')
  async previewSwap(@Param('id') id: string, @Body() form: SwapReadsDto): Promise<ChangePreview> {
    return this.changes.preview(id, this.amending.swap(form, await this.day(form.on)));
  }

  @Post('swap')
  @HttpCode(200)
  @MovesMoney()
  @Needs('sign contracts')
  async swap(@Param('id') id: string, @Body() form: SwapReadsDto): Promise<ContractView> {
    return this.perform(id, this.amending.swap(form, await this.day(form.on)));
  }

  @Post('lower-price/preview')
  @HttpCode(200)
  @Needs('sign contracts')
  async previewLowerPrice(@Param('id') id: string, @Body() form: LowerPriceDto): Promise<ChangePreview> {
    return this.changes.preview(id, this.amending.lowerPrice(form, await this.day(form.on)));
  }

  @Post('lower-price')
  @HttpCode(200)
  @MovesMoney()
  @Needs('sign contracts')
  async lowerPrice(@Param('id') id: string, @Body() form: LowerPriceDto): Promise<ContractView> {
    return this.perform(id, this.amending.lowerPrice(form, await this.day(form.on)));
  }

  @Post('carry/preview')
  @HttpCode(200)
  @Needs('sign contracts')
  async previewCarry(@Param('id') id: string, @Body() form: CarryReadsDto): Promise<ChangePreview> {
    return this.changes.preview(id, this.handing.carry(form, await this.day(form.on)));
  }

  @Post('carry')
  @HttpCode(200)
  @MovesMoney()
  @Needs('sign contracts')
  async carry(@Param('id') id: string, @Body() form: CarryReadsDto): Promise<ContractView> {
    return this.perform(id, this.handing.carry(form, await this.day(form.on)));
  }

  @Post('assign/preview')
  @HttpCode(200)
  @Needs('sign contracts')
  async previewAssign(@Param('id') id: string, @Body() form: AssignContractDto): Promise<ChangePreview> {
    return this.changes.preview(id, this.handing.assign(form, await this.day(form.on)));
  }

  @Post('assign')
  @HttpCode(200)
  @MovesMoney()
  @Needs('sign contracts')
  async assign(@Param('id') id: string, @Body() form: AssignContractDto): Promise<ContractView> {
    return this.perform(id, this.handing.assign(form, await this.day(form.on)));
  }

  private async perform(id: string, asked: AskedChange): Promise<ContractView> {
    await this.changes.perform(id, asked);
    return this.views.one(id);
  }

  private async day(on: string | null | undefined): Promise<Day> {
    return (on as Day | null | undefined) ?? this.departments.today();
  }
}
