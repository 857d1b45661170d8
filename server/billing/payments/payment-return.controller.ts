import { Body, Controller, HttpCode, Inject, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import { MovesMoney } from '../../platform/http/unit.interceptor.ts';
import { ReturnedChecks } from '../charges/returned-check.service.ts';
import { RefundDto, ReturnDto } from './payment-return.dto.ts';
import { PaymentViews } from './payment-view.service.ts';
import type { PaymentView } from './payment.dto.ts';
import { Refunds } from './refund.service.ts';

@ApiTags('billing')
@Controller('api')
export class PaymentReturnController {
  constructor(
    @Inject(PaymentViews) private readonly views: PaymentViews,
    @Inject(ReturnedChecks) private readonly returns: ReturnedChecks,
    @Inject(Refunds) private readonly refunds: Refunds,
  ) {}

  @Post('payments/:id/return')
  @HttpCode(200)
  @MovesMoney()
  @Needs('record payments')
  async comeBack(@Param('id') id: string, @Body() form: ReturnDto): Promise<PaymentView> {
    await this.returns.comeBack(id, form);
    return this.views.one(id);
  }

  @Post('payments/:id/refunds')
  @MovesMoney()
  @Needs('record payments')
  async refundPayment(@Param('id') id: string, @Body() form: RefundDto): Promise<PaymentView> {
    await this.refunds.refund('payment', id, form);
    return this.views.one(id);
  }

  @Post('credit-memos/:id/refunds')
  @MovesMoney()
  @Needs('record payments')
  async refundMemo(@Param('id') id: string, @Body() form: RefundDto): Promise<{ id: string }> {
    return { id: await this.refunds.refund('creditMemo', id, form) };
  }
}
