import { Body, Controller, Get, Inject, Param, Patch, Put, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/needs.ts';
import type { Listed } from '../platform/http/lists.ts';
import { IfMatch } from '../platform/http/version.ts';
import { ChangeNightDto, NightListQuery, PeopleOfNightDto } from '../season/night.dto.ts';
import type { NightView } from '../season/night.dto.ts';
import { NightsWithPaper } from './nights-with-paper.service.ts';

@ApiTags('packet')
@Controller('api/nights')
export class NightController {
  constructor(@Inject(NightsWithPaper) private readonly nights: NightsWithPaper) {}

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
