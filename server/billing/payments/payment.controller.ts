import { Body, Controller, Get, HttpCode, Inject, Param, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { DepartmentService } from '../../access/department.service.ts';
import { Needs } from '../../access/needs.ts';
import type { Day } from '../../domain/day.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { MovesMoney } from '../../platform/http/unit.interceptor.ts';
import { CreditMemoViews } from '../credits/credit-memo-view.service.ts';
import type { CreditMemoView } from '../credits/credit-memo.dto.ts';
import { ApplicationService } from './application.service.ts';
import { PaymentViews } from './payment-view.service.ts';
import { ApplyDto, PaymentDto, PaymentListQuery, TakeBackDto } from './payment.dto.ts';
import type { PaymentView } from './payment.dto.ts';
import { PaymentService } from './payment.service.ts';
import { TakingBack } from './taking-back.service.ts';

@ApiTags('billing')
@Controller('api')
export class PaymentController {
  constructor(
    @Inject(PaymentViews) private readonly views: PaymentViews,
    @Inject(CreditMemoViews) private readonly memos: CreditMemoViews,
    @Inject(PaymentService) private readonly payments: PaymentService,
    @Inject(ApplicationService) private readonly applications: ApplicationService,
    @Inject(TakingBack) private readonly takingBack: TakingBack,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  @Get('payments')
  @Needs('see money')
  async list(@Query() query: PaymentListQuery): Promise<Listed<PaymentView>> {
    return this.views.list(query);
  }

  @Get('payments/:id')
  @Needs('see money')
  async one(@Param('id') id: string): Promise<PaymentView> {
    return this.views.one(id);
  }

  @Post('payments')
  @MovesMoney()
  @Needs('record payments')
  async receive(@Body() form: PaymentDto): Promise<PaymentView> {
    return this.views.one(await this.payments.receive(form));
  }

  @Post('payments/:id/applications')
  @MovesMoney()
  @Needs('record payments')
  async apply(@Param('id') id: string, @Body() form: ApplyDto): Promise<PaymentView> {
    await this.applications.apply(id, [form], (form.appliedOn ?? null) as Day | null, await this.departments.today());
    return this.views.one(id);
  }

  @Post('applications/:id/take-back')
  @HttpCode(200)
  @MovesMoney()
  @Needs('record payments')
  async takeBack(@Param('id') id: string, @Body() form: TakeBackDto): Promise<PaymentView | CreditMemoView> {
    const credit = await this.takingBack.takeBack(id, (form?.takenBackOn ?? null) as Day | null, await this.departments.today());
    return credit.kind === 'payment' ? this.views.one(credit.id) : this.memos.one(credit.id);
  }
}
