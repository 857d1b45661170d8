import { Body, Controller, Inject, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import { MovesMoney } from '../../platform/http/unit.interceptor.ts';
import { InvoiceViews } from '../invoices/invoice-view.service.ts';
import type { WholeInvoiceView } from '../invoices/invoice.dto.ts';
import { ChargeDto } from './charge.dto.ts';
import { ChargeIssuing } from './charge.service.ts';

@ApiTags('billing')
@Controller('api/charges')
export class ChargeController {
  constructor(
    @Inject(ChargeIssuing) private readonly charges: ChargeIssuing,
    @Inject(InvoiceViews) private readonly views: InvoiceViews,
  ) {}

  @Post()
  @MovesMoney()
  @Needs('bill')
  async issue(@Body() form: ChargeDto): Promise<WholeInvoiceView> {
    return this.views.one(await this.charges.issue(form));
  }
}
