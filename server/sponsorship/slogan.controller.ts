import { Body, Controller, Delete, Get, HttpCode, Inject, Param, Patch, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/needs.ts';
import type { Listed } from '../platform/http/lists.ts';
import { IfMatch } from '../platform/http/version.ts';
import { ChangeSloganDto, SloganDto, SloganListQuery } from './slogan.dto.ts';
import type { SloganView } from './slogan.dto.ts';
import { SloganService } from './slogan.service.ts';

@ApiTags('sponsorship')
@Controller('api/slogans')
export class SloganController {
  constructor(@Inject(SloganService) private readonly slogans: SloganService) {}

  @Get()
  @Needs('see copy')
  async list(@Query() query: SloganListQuery): Promise<Listed<SloganView>> {
    return this.slogans.list(query);
  }

  @Get(':id')
  @Needs('see copy')
  async one(@Param('id') id: string): Promise<SloganView> {
    return this.slogans.one(id);
  }

  @Post()
  @Needs('change copy')
  async add(@Body() form: SloganDto): Promise<SloganView> {
    return this.slogans.add(form);
  }

  @Patch(':id')
  @Needs('change copy')
  async change(@Param('id') id: string, @IfMatch() version: number, @Body() form: ChangeSloganDto): Promise<SloganView> {
    return this.slogans.change(id, version, form);
  }

  @Delete(':id')
  @HttpCode(204)
  @Needs('change copy')
  async remove(@Param('id') id: string): Promise<void> {
    return this.slogans.remove(id);
  }
}
