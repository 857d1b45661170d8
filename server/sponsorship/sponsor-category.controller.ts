import { Body, Controller, Get, Inject, Param, Patch, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/needs.ts';
import type { Listed } from '../platform/http/lists.ts';
import { IfMatch } from '../platform/http/version.ts';
import { ChangeSponsorCategoryDto, SponsorCategoryDto, SponsorCategoryListQuery } from './sponsor-category.dto.ts';
import type { SponsorCategoryView } from './sponsor-category.dto.ts';
import { SponsorCategoryService } from './sponsor-category.service.ts';

@ApiTags('sponsorship')
@Controller('api/sponsor-categories')
export class SponsorCategoryController {
  constructor(@Inject(SponsorCategoryService) private readonly categories: SponsorCategoryService) {}

  @Get()
  @Needs('see copy')
  async list(@Query() query: SponsorCategoryListQuery): Promise<Listed<SponsorCategoryView>> {
    return this.categories.list(query);
  }

  @Get(':id')
  @Needs('see copy')
  async one(@Param('id') id: string): Promise<SponsorCategoryView> {
    return this.categories.one(id);
  }

  @Post()
  @Needs('change contracts')
  async add(@Body() form: SponsorCategoryDto): Promise<SponsorCategoryView> {
    return this.categories.add(form);
  }

  @Patch(':id')
  @Needs('change contracts')
  async change(@Param('id') id: string, @IfMatch() version: number, @Body() form: ChangeSponsorCategoryDto): Promise<SponsorCategoryView> {
    return this.categories.change(id, version, form);
  }
}
