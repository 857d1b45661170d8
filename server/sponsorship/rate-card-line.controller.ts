import { Body, Controller, Get, HttpCode, Inject, Param, Patch, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/needs.ts';
import type { Listed } from '../platform/http/lists.ts';
import { IfMatch } from '../platform/http/version.ts';
import { ChangeRateCardLineDto, CopyRateCardDto, RateCardLineDto, RateCardLineListQuery } from './rate-card-line.dto.ts';
import type { RateCardCopyView, RateCardLineView } from './rate-card-line.dto.ts';
import { RateCardLineService } from './rate-card-line.service.ts';

@ApiTags('sponsorship')
@Controller('api/rate-card-lines')
export class RateCardLineController {
  constructor(@Inject(RateCardLineService) private readonly lines: RateCardLineService) {}

  @Get()
  @Needs('see contracts')
  async list(@Query() query: RateCardLineListQuery): Promise<Listed<RateCardLineView>> {
    return this.lines.list(query);
  }

  @Get(':id')
  @Needs('see contracts')
  async one(@Param('id') id: string): Promise<RateCardLineView> {
    return this.lines.one(id);
  }

  @Post()
  @Needs('change contracts')
  async add(@Body() form: RateCardLineDto): Promise<RateCardLineView> {
    return this.lines.add(form);
  }

  /** Another season's prices, so much higher; what has a price already keeps it. */
  @Post('copies')
  @HttpCode(200)
  @Needs('change contracts')
  async copy(@Body() form: CopyRateCardDto): Promise<RateCardCopyView> {
    return this.lines.copy(form);
  }

  @Patch(':id')
  @Needs('change contracts')
  async change(@Param('id') id: string, @IfMatch() version: number, @Body() form: ChangeRateCardLineDto): Promise<RateCardLineView> {
    return this.lines.change(id, version, form);
  }
}
