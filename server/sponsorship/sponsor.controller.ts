import { Body, Controller, Get, Inject, Param, Patch, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/needs.ts';
import type { Listed } from '../platform/http/lists.ts';
import { IfMatch } from '../platform/http/version.ts';
import { ChangeSponsorDto, SponsorDto, SponsorListQuery } from './sponsor.dto.ts';
import type { SponsorView } from './sponsor.dto.ts';
import { SponsorService } from './sponsor.service.ts';

@ApiTags('sponsorship')
@Controller('api/sponsors')
export class SponsorController {
  constructor(@Inject(SponsorService) private readonly sponsors: SponsorService) {}

  @Get()
  @Needs('see copy')
  async list(@Query() query: SponsorListQuery): Promise<Listed<SponsorView>> {
    return this.sponsors.list(query);
  }

  @Get(':id')
  @Needs('see copy')
  async one(@Param('id') id: string): Promise<SponsorView> {
    return this.sponsors.one(id);
  }

  @Post()
  @Needs('change contracts')
  async add(@Body() form: SponsorDto): Promise<SponsorView> {
    return this.sponsors.add(form);
  }

  @Patch(':id')
  @Needs('change contracts')
  async change(@Param('id') id: string, @IfMatch() version: number, @Body() form: ChangeSponsorDto): Promise<SponsorView> {
    return this.sponsors.change(id, version, form);
  }
}
