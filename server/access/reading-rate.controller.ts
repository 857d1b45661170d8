import { Body, Controller, Get, Inject, Put } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from './needs.ts';
import { ReadingRateDto } from './reading-rate.dto.ts';
import type { ReadingRateView } from './reading-rate.dto.ts';
import { ReadingRateService } from './reading-rate.service.ts';

@ApiTags('access')
@Controller('api/me/reading-rate')
export class ReadingRateController {
  constructor(@Inject(ReadingRateService) private readonly rates: ReadingRateService) {}

  @Get()
  @Needs('be here')
  async mine(): Promise<ReadingRateView> {
    return this.rates.mine();
  }

  @Put()
  @Needs('be here')
  async change(@Body() form: ReadingRateDto): Promise<ReadingRateView> {
    return this.rates.change(form.wordsPerMinute);
  }
}
