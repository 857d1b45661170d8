import { Body, Controller, Get, Inject, Param, Patch, Put, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/needs.ts';
import type { Listed } from '../platform/http/lists.ts';
import { IfMatch } from '../platform/http/version.ts';
import { ChangeNightDto, NightListQuery, PeopleOfNightDto } from './night.dto.ts';
import type { NightView } from './night.dto.ts';
import { NightService } from './night.service.ts';

@ApiTags('season')
@Controller('api/nights')
export class NightController {
  constructor(@Inject(NightService) private readonly nights: NightService) {}

  @Get()
  @Needs('see the season')
  async list(@Query() query: NightListQuery): Promise<Listed<NightView>> {
    return this.nights.list(query);
  }

  @Get(':id')
  @Needs('see the season')
  async one(@Param('id') id: string): Promise<NightView> {
    return this.nights.one(id);
  }

  @Patch(':id')
  @Needs('change the season')
  async change(@Param('id') id: string, @IfMatch() version: number, @Body() form: ChangeNightDto): Promise<NightView> {
    return this.nights.change(id, version, form);
  }

  @Put(':id/people')
  @Needs('change the season')
  async putPeople(@Param('id') id: string, @IfMatch() version: number, @Body() form: PeopleOfNightDto): Promise<NightView> {
    return this.nights.putPeople(id, version, form.people);
  }
}
