import { Controller, Get, Inject, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import { DocumentQuery } from './document.dto.ts';
import type { FoundDocuments } from './document.dto.ts';
import { DocumentsService } from './documents.service.ts';

@ApiTags('reports')
@Controller('api/documents')
export class DocumentsController {
  constructor(@Inject(DocumentsService) private readonly documents: DocumentsService) {}

  /** Invoices, credit memos, payments, receipts and deposit slips by number, amount, name or check number. */
  @Get()
  @Needs('see money')
  async find(@Query() query: DocumentQuery): Promise<FoundDocuments> {
    return query.q ? this.documents.find(query.q) : { data: [], total: 0, amountCents: null };
  }
}
