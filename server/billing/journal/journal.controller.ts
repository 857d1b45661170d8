import { Body, Controller, Get, Inject, Param, Post, Put, Query, StreamableFile } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { MovesMoney, OutsideUnit } from '../../platform/http/unit.interceptor.ts';
import { IfMatch } from '../../platform/http/version.ts';
import { JournalBatchViews } from './journal-batch-views.service.ts';
import { JournalBatchDto, JournalBatchListQuery, JournalPreviewQuery } from './journal-batch.dto.ts';
import type { JournalBatchView, JournalPreviewView } from './journal-batch.dto.ts';
import { JournalBatches } from './journal-batches.service.ts';
import { JournalLayoutDto } from './journal-layout.dto.ts';
import type { JournalLayoutView } from './journal-layout.dto.ts';
import { JournalLayouts } from './journal-layouts.service.ts';

@ApiTags('billing')
@Controller('api')
export class JournalController {
  constructor(
    @Inject(JournalBatchViews) private readonly views: JournalBatchViews,
    @Inject(JournalBatches) private readonly batches: JournalBatches,
    @Inject(JournalLayouts) private readonly layouts: JournalLayouts,
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
  ) {}

  @Get('journal-batches')
  @Needs('see the journal')
  async list(@Query() query: JournalBatchListQuery): Promise<Listed<JournalBatchView>> {
    return this.views.list(query);
  }

  /** What the next batch would hold; changes nothing. */
  @Get('journal-batches/preview')
  @Needs('see the journal')
  async preview(@Query() query: JournalPreviewQuery): Promise<JournalPreviewView> {
    return this.views.preview(query);
  }

  @Get('journal-batches/:id')
  @Needs('see the journal')
  async one(@Param('id') id: string): Promise<JournalBatchView> {
    return this.views.one(id);
  }

  /** The file, byte for byte as it was made. */
  @Get('journal-batches/:id/journal.csv')
  @OutsideUnit()
  @Needs('see the journal')
  async file(@Param('id') id: string): Promise<StreamableFile> {
    const { bytes, name } = await this.work.run(() => this.views.content(id));
    return new StreamableFile(bytes, { type: 'text/csv; charset=utf-8', disposition: `attachment; filename="${name}"`, length: bytes.length });
  }

  @Post('journal-batches')
  @MovesMoney()
  @Needs('export the journal')
  async make(@Body() form: JournalBatchDto): Promise<JournalBatchView> {
    return this.views.one(await this.batches.make(form));
  }

  @Get('journal-layouts')
  @Needs('see the journal')
  async layoutList(): Promise<Listed<JournalLayoutView>> {
    const data = await this.layouts.list();
    return { data, total: data.length };
  }

  @Get('journal-layouts/:id')
  @Needs('see the journal')
  async layout(@Param('id') id: string): Promise<JournalLayoutView> {
    return this.layouts.one(id);
  }

  @Put('journal-layouts/:id')
  @Needs('export the journal')
  async putLayout(@Param('id') id: string, @IfMatch() version: number, @Body() form: JournalLayoutDto): Promise<JournalLayoutView> {
    return this.layouts.put(id, version, form);
  }
}
