import { Body, Controller, HttpCode, Inject, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { DepartmentService } from '../../access/department.service.ts';
import { Needs } from '../../access/needs.ts';
import type { Day } from '../../domain/day.ts';
import { MovesMoney } from '../../platform/http/unit.interceptor.ts';
import { ContractViews } from '../../sponsorship/contract-view.service.ts';
import type { ContractView } from '../../sponsorship/contract-view.ts';
import { EndContractDto, CloseContractDto, ReopenContractDto, HoldContractDto, LiftHoldDto } from './change.dto.ts';
import type { ChangePreview } from './change.dto.ts';
import { ContractChanges } from './contract-changes.service.ts';
import type { AskedChange } from './contract-changes.service.ts';
import { Ending } from './ending.service.ts';
import { Holding } from './holding.service.ts';

/** Whether a contract goes on: held, ended, closed, opened again. Each change can be looked at first. */
@ApiTags('billing')
@Controller('api/contracts/:id')
export class ChangeCourseController {
  constructor(
    @Inject(ContractChanges) private readonly changes: ContractChanges,
    @Inject(Ending) private readonly ending: Ending,
    @Inject(Holding) private readonly holding: Holding,
    @Inject(ContractViews) private readonly views: ContractViews,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  @Post('end/preview')
  @HttpCode(200)
  @Needs('sign contracts')
  async previewEnd(@Param('id') id: string, @Body() form: EndContractDto): Promise<ChangePreview> {
    return this.changes.preview(id, this.ending.end(form, await this.day(form.on)));
  }

  @Post('end')
  @HttpCode(200)
  @MovesMoney()
  @Needs('sign contracts')
  async end(@Param('id') id: string, @Body() form: EndContractDto): Promise<ContractView> {
    return this.perform(id, this.ending.end(form, await this.day(form.on)));
  }

  @Post('close/preview')
  @HttpCode(200)
  @Needs('sign contracts')
  async previewClose(@Param('id') id: string, @Body() form: CloseContractDto): Promise<ChangePreview> {
    return this.changes.preview(id, this.ending.close(await this.day(form.on)));
  }

  @Post('close')
  @HttpCode(200)
  @MovesMoney()
  @Needs('sign contracts')
  async close(@Param('id') id: string, @Body() form: CloseContractDto): Promise<ContractView> {
    return this.perform(id, this.ending.close(await this.day(form.on)));
  }

  @Post('reopen/preview')
  @HttpCode(200)
  @Needs('sign contracts')
  async previewReopen(@Param('id') id: string, @Body() form: ReopenContractDto): Promise<ChangePreview> {
    return this.changes.preview(id, this.ending.reopen(await this.day(form.on)));
  }

  @Post('reopen')
  @HttpCode(200)
  @MovesMoney()
  @Needs('sign contracts')
  async reopen(@Param('id') id: string, @Body() form: ReopenContractDto): Promise<ContractView> {
    return this.perform(id, this.ending.reopen(await this.day(form.on)));
  }

  @Post('hold/preview')
  @HttpCode(200)
  @Needs('sign contracts')
  async previewHold(@Param('id') id: string, @Body() form: HoldContractDto): Promise<ChangePreview> {
    return this.changes.preview(id, this.holding.hold(form, await this.day(form.on)));
  }

  @Post('hold')
  @HttpCode(200)
  @MovesMoney()
  @Needs('sign contracts')
  async hold(@Param('id') id: string, @Body() form: HoldContractDto): Promise<ContractView> {
    return this.perform(id, this.holding.hold(form, await this.day(form.on)));
  }

  @Post('lift-hold/preview')
  @HttpCode(200)
  @Needs('sign contracts')
  async previewLiftHold(@Param('id') id: string, @Body() form: LiftHoldDto): Promise<ChangePreview> {
    return this.changes.preview(id, this.holding.lift(form, await this.day(form.on)));
  }

  @Post('lift-hold')
  @HttpCode(200)
  @MovesMoney()
  @Needs('sign contracts')
  async liftHold(@Param('id') id: string, @Body() form: LiftHoldDto): Promise<ContractView> {
    return this.perform(id, this.holding.lift(form, await this.day(form.on)));
  }

  private async perform(id: string, asked: AskedChange): Promise<ContractView> {
    await this.changes.perform(id, asked);
    return this.views.one(id);
  }

  private async day(on: string | null | undefined): Promise<Day> {
    return (on as Day | null | undefined) ?? this.departments.today();
  }
}
