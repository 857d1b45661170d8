import { Body, Controller, Get, Inject, Param, Patch, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/needs.ts';
import type { Listed } from '../platform/http/lists.ts';
import { IfMatch } from '../platform/http/version.ts';
import { ChangeVenueDto, VenueDto, VenueListQuery } from './venue.dto.ts';
import type { VenueView } from './venue.dto.ts';
import { VenueService } from './venue.service.ts';

@ApiTags('season')
@Controller('api/venues')
export class VenueController {
  constructor(@Inject(VenueService) private readonly venues: VenueService) {}

  @Get()
  @Needs('see the season')
  async list(@Query() query: VenueListQuery): Promise<Listed<VenueView>> {
    return this.venues.list(query);
  }

  @Get(':id')
  @Needs('see the season')
  async one(@Param('id') id: string): Promise<VenueView> {
    return this.venues.one(id);
  }

  @Post()
  @Needs('change the season')
  async add(@Body() form: VenueDto): Promise<VenueView> {
    return this.venues.add(form);
  }

  @Patch(':id')
  @Needs('change the season')
  async change(@Param('id') id: string, @IfMatch() version: number, @Body() form: ChangeVenueDto): Promise<VenueView> {
    return this.venues.change(id, version, form);
  }
}
