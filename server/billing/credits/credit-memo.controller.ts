import { Body, Controller, Get, Inject, Param, Post, Query, StreamableFile } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { DepartmentService } from '../../access/department.service.ts';
import { Needs } from '../../access/needs.ts';
import type { Day } from '../../domain/day.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { MovesMoney, OutsideUnit } from '../../platform/http/unit.interceptor.ts';
import { ApplicationService } from '../payments/application.service.ts';
import { ApplyDto } from '../payments/payment.dto.ts';
import { CreditMemoPrinting } from './credit-memo-printing.service.ts';
import { CreditMemoViews } from './credit-memo-view.service.ts';
import { CreditMemoListQuery } from './credit-memo.dto.ts';
import type { CreditMemoView, WholeCreditMemoView } from './credit-memo.dto.ts';

@ApiTags('billing')
@Controller('api/credit-memos')
export class CreditMemoController {
  constructor(
    @Inject(CreditMemoViews) private readonly views: CreditMemoViews,
    @Inject(ApplicationService) private readonly applications: ApplicationService,
    @Inject(CreditMemoPrinting) private readonly printing: CreditMemoPrinting,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  @Get()
  @Needs('see money')
  async list(@Query() query: CreditMemoListQuery): Promise<Listed<CreditMemoView>> {
    return this.views.list(query);
  }

  @Get(':id')
  @Needs('see money')
  async one(@Param('id') id: string): Promise<WholeCreditMemoView> {
    return this.views.one(id);
  }

  @Get(':id/credit-memo.pdf')
  @OutsideUnit()
  @Needs('see money')
  async pdf(@Param('id') id: string): Promise<StreamableFile> {
    const { bytes, name } = await this.printing.pdf(id);
    return new StreamableFile(bytes, { type: 'application/pdf', disposition: `inline; filename="${name}"`, length: bytes.length });
  }

  @Post(':id/applications')
  @MovesMoney()
  @Needs('record payments')
  async apply(@Param('id') id: string, @Body() form: ApplyDto): Promise<WholeCreditMemoView> {
    await this.views.one(id);
    await this.applications.apply(id, [form], (form.appliedOn ?? null) as Day | null, await this.departments.today());
    return this.views.one(id);
  }
}
