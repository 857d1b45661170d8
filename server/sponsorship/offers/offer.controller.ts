import { Body, Controller, Delete, Get, HttpCode, Inject, Param, Patch, Post, Query, StreamableFile } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { OutsideUnit } from '../../platform/http/unit.interceptor.ts';
import { IfMatch } from '../../platform/http/version.ts';
import { OfferPrinting } from './offer-printing.service.ts';
import type { OfferView } from './offer-view.ts';
import { OfferViews } from './offer-views.service.ts';
import { ChangeOfferDto, OfferDto, OfferListQuery, OfferPdfQuery } from './offer.dto.ts';
import { OfferService } from './offer.service.ts';

@ApiTags('sponsorship')
@Controller('api/offers')
export class OfferController {
  constructor(
    @Inject(OfferService) private readonly offers: OfferService,
    @Inject(OfferViews) private readonly views: OfferViews,
    @Inject(OfferPrinting) private readonly printing: OfferPrinting,
  ) {}

  @Get()
  @Needs('see contracts')
  async list(@Query() query: OfferListQuery): Promise<Listed<OfferView>> {
    return this.views.list(query);
  }

  @Get(':id')
  @Needs('see contracts')
  async one(@Param('id') id: string): Promise<OfferView> {
    return this.views.one(id);
  }

  @Get(':id/pdf')
  @OutsideUnit()
  @Needs('see contracts')
  async pdf(@Param('id') id: string, @Query() { office }: OfferPdfQuery): Promise<StreamableFile> {
    const { bytes, name } = await this.printing.pdf(id, office ?? false);
    return new StreamableFile(bytes, { type: 'application/pdf', disposition: `inline; filename="${name}"`, length: bytes.length });
  }

  @Post()
  @Needs('make offers')
  async add(@Body() form: OfferDto): Promise<OfferView> {
    return this.offers.add(form);
  }

  @Patch(':id')
  @Needs('make offers')
  async change(@Param('id') id: string, @IfMatch() version: number, @Body() form: ChangeOfferDto): Promise<OfferView> {
    return this.offers.change(id, version, form);
  }

  @Delete(':id')
  @HttpCode(204)
  @Needs('make offers')
  async remove(@Param('id') id: string): Promise<void> {
    await this.offers.remove(id);
  }
}
