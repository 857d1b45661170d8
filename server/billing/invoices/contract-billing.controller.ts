import { Body, Controller, Get, HttpCode, Inject, Param, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import { MovesMoney } from '../../platform/http/unit.interceptor.ts';
import { ContractViews } from '../../sponsorship/contract-view.service.ts';
import type { ContractView } from '../../sponsorship/contract-view.ts';
import { InvoiceIssuing } from './invoice-issuing.service.ts';
import { DueQuery } from './invoice.dto.ts';
import type { DueView } from './invoice.dto.ts';
import { OpeningDto } from '../opening/opening.dto.ts';
import { OpeningService } from '../opening/opening.service.ts';
import { StatementService } from '../statements/statement.service.ts';
import type { AccountLineView, DeliveryLineView, Statement } from '../statements/statement.dto.ts';

/** What the accounts office adds to a contract: what is due, what it was taken over with, its two statements. */
@ApiTags('billing')
@Controller('api/contracts/:id')
export class ContractBillingController {
  constructor(
    @Inject(InvoiceIssuing) private readonly issuing: InvoiceIssuing,
    @Inject(OpeningService) private readonly openings: OpeningService,
    @Inject(StatementService) private readonly statements: StatementService,
    @Inject(ContractViews) private readonly contracts: ContractViews,
  ) {}

  @Get('due')
  @Needs('see money')
  async due(@Param('id') id: string, @Query() query: DueQuery): Promise<DueView> {
    return this.issuing.due(id, query.through);
  }

  @Post('opening')
  @HttpCode(200)
  @MovesMoney()
  @Needs('sign contracts')
  async open(@Param('id') id: string, @Body() form: OpeningDto): Promise<ContractView> {
    await this.openings.open(id, form);
    return this.contracts.one(id);
  }

  @Get('delivery-statement')
  @Needs('see contracts')
  async delivery(@Param('id') id: string): Promise<Statement<DeliveryLineView>> {
    return this.statements.delivery(id);
  }

  @Get('account-statement')
  @Needs('see money')
  async account(@Param('id') id: string): Promise<Statement<AccountLineView>> {
    return this.statements.account(id);
  }
}
