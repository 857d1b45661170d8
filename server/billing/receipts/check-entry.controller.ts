import { Controller, Get, Inject, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import { IdField } from '../../platform/http/fields.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { ReceiptViews } from './receipt-view.service.ts';
import type { OpenPayerView } from './receipt.dto.ts';

export class OpenPayersQuery {
  @IdField({ optional: true }) sellerId?: string;
}

/** What the page for many checks in a row asks beside the invoices. */
@ApiTags('billing')
@Controller('api/open-payers')
export class CheckEntryController {
  constructor(@Inject(ReceiptViews) private readonly views: ReceiptViews) {}

  @Get()
  @Needs('see money')
  async list(@Query() query: OpenPayersQuery): Promise<Listed<OpenPayerView>> {
    return this.views.openPayers(query.sellerId);
  }
}
