import { Body, Controller, HttpCode, Inject, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import { TheVisitor } from '../../access/visitor.ts';
import type { Visitor } from '../../access/visitor.ts';
import { MovesMoney } from '../../platform/http/unit.interceptor.ts';
import { InvoiceViews } from '../invoices/invoice-view.service.ts';
import type { WholeInvoiceView } from '../invoices/invoice.dto.ts';
import { Discounts } from './discount.service.ts';
import { Recoveries } from './recovery.service.ts';
import { ApproveWriteOffDto, AskWriteOffDto, DeclineWriteOffDto, DiscountDto, RecoverDto } from './write-off.dto.ts';
import { WriteOffs } from './write-off.service.ts';

@ApiTags('billing')
@Controller('api')
export class WriteOffController {
  constructor(
    @Inject(WriteOffs) private readonly writeOffs: WriteOffs,
    @Inject(Recoveries) private readonly recoveries: Recoveries,
    @Inject(Discounts) private readonly discounts: Discounts,
    @Inject(InvoiceViews) private readonly views: InvoiceViews,
  ) {}

  @Post('invoices/:id/write-off-requests')
  @MovesMoney()
  @Needs('bill')
  async ask(@Param('id') id: string, @Body() form: AskWriteOffDto): Promise<WholeInvoiceView> {
    await this.writeOffs.ask(id, form);
    return this.views.one(id);
  }

  @Post('write-off-requests/:id/approve')
  @HttpCode(200)
  @MovesMoney()
  @Needs('approve write-offs')
  async approve(@Param('id') id: string, @Body() form: ApproveWriteOffDto, @TheVisitor() visitor: Visitor): Promise<WholeInvoiceView> {
    return this.views.one(await this.writeOffs.approve(id, form, visitor.roles));
  }

  @Post('write-off-requests/:id/decline')
  @HttpCode(200)
  @MovesMoney()
  @Needs('approve write-offs')
  async decline(@Param('id') id: string, @Body() form: DeclineWriteOffDto): Promise<WholeInvoiceView> {
    return this.views.one(await this.writeOffs.decline(id, form));
  }

  @Post('invoices/:id/recoveries')
  @MovesMoney()
  @Needs('record payments')
  async recover(@Param('id') id: string, @Body() form: RecoverDto): Promise<WholeInvoiceView> {
    await this.recoveries.recover(id, form);
    return this.views.one(id);
  }

  @Post('invoices/:id/discounts')
  @MovesMoney()
  @Needs('bill')
  async discount(@Param('id') id: string, @Body() form: DiscountDto): Promise<WholeInvoiceView> {
    await this.discounts.take(id, form);
    return this.views.one(id);
  }
}
