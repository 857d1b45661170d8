import { Controller, Get, Inject, Param } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import type { Listed } from '../../platform/http/lists.ts';
import type { ForecastView } from './forecast.dto.ts';
import { ForecastService } from './forecast.service.ts';

@ApiTags('planning')
@Controller('api/seasons/:id/forecasts')
export class ForecastController {
  constructor(@Inject(ForecastService) private readonly forecasts: ForecastService) {}

  @Get()
  @Needs('see contracts')
  async ofSeason(@Param('id') id: string): Promise<Listed<ForecastView>> {
    const data = await this.forecasts.ofSeason(id);
    return { data, total: data.length };
  }
}
