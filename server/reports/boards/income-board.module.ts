import { Module } from '@nestjs/common';
import { BillingModule } from '../../billing/billing.module.ts';
import { IncomeBoardController } from './income-board.controller.ts';
import { IncomeBoard } from './income-board.service.ts';
import { IncomeSpans } from './income-span.service.ts';

@Module({ imports: [BillingModule], controllers: [IncomeBoardController], providers: [IncomeBoard, IncomeSpans] })
export class IncomeBoardModule {}
