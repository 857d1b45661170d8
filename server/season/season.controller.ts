import { Body, Controller, Get, Inject, Param, Patch, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/needs.ts';
import type { Listed } from '../platform/http/lists.ts';
import { IfMatch } from '../platform/http/version.ts';
import { ChangeSeasonDto, SeasonDto, SeasonListQuery } from './season.dto.ts';
import type { SeasonView } from './season.dto.ts';
import { SeasonService } from './season.service.ts';

@ApiTags('season')
@Controller('api/seasons')
export class SeasonController {
  constructor(@Inject(SeasonService) private readonly seasons: SeasonService) {}

  @Get()
  @Needs('see the season')
  async list(@Query() query: SeasonListQuery): Promise<Listed<SeasonView>> {
    return this.seasons.list(query);
  }

  @Get(':id')
  @Needs('see the season')
  async one(@Param('id') id: string): Promise<SeasonView> {
    return this.seasons.one(id);
  }

  @Post()
  @Needs('change the season')
  async add(@Body() form: SeasonDto): Promise<SeasonView> {
    return this.seasons.add(form);
  }

  @Patch(':id')
  @Needs('change the season')
  async change(@Param('id') id: string, @IfMatch() version: number, @Body() form: ChangeSeasonDto): Promise<SeasonView> {
    return this.seasons.change(id, version, form);
  }
}
