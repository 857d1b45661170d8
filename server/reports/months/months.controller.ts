import { Body, Controller, Get, HttpCode, Inject, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import { BenefitsOverDays } from '../../billing/changes/benefits-over-days.service.ts';
import { lastOfMonth } from '../../domain/day.ts';
import { monthCalled } from '../../domain/ledger/month.ts';
import { MonthClosing } from '../../ledger/month-closing.service.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { MovesMoney } from '../../platform/http/unit.interceptor.ts';
import { CloseMonthDto } from './month.dto.ts';
import type { MonthPageView, MonthView } from './month.dto.ts';
import { MonthsService } from './months.service.ts';

@ApiTags('ledger')
@Controller('api/months')
export class MonthsController {
  constructor(
    @Inject(MonthsService) private readonly months: MonthsService,
    @Inject(MonthClosing) private readonly closing: MonthClosing,
    @Inject(BenefitsOverDays) private readonly overDays: BenefitsOverDays,
  ) {}

  @Get()
  @Needs('see money')
  async list(): Promise<Listed<MonthView>> {
    const data = await this.months.list();
    return { data, total: data.length };
  }

  /** What is late before a month is closed, or was late when it was. */
  @Get(':month')
  @Needs('see money')
  async one(@Param('month') month: string): Promise<MonthPageView> {
    return this.months.one(month);
  }

  /** Closes a month for good; there is no opening it again. What earns over days earns through its last day first. */
  @Post(':month/close')
  @HttpCode(200)
  @MovesMoney()
  @Needs('close a month')
  async close(@Param('month') month: string, @Body() form: CloseMonthDto): Promise<MonthPageView> {
    const first = monthCalled(month);
    await this.overDays.earnThrough(lastOfMonth(first));
    await this.closing.close(first, form.acknowledgesNights ?? false, () => this.months.lateNights(first));
    return this.months.one(month);
  }
}
