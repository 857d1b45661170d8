import { Body, Controller, Delete, Get, HttpCode, Inject, Param, Patch, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { IfMatch } from '../../platform/http/version.ts';
import { ChangeReservedCategoryDto, ReservedCategoryDto, ReservedCategoryListQuery } from './reserved-category.dto.ts';
import type { ReservedCategoryView } from './reserved-category.dto.ts';
import { ReservedCategoryService } from './reserved-category.service.ts';

@ApiTags('sponsorship')
@Controller('api/reserved-categories')
export class ReservedCategoryController {
  constructor(@Inject(ReservedCategoryService) private readonly reserved: ReservedCategoryService) {}

  @Get()
  @Needs('see contracts')
  async list(@Query() query: ReservedCategoryListQuery): Promise<Listed<ReservedCategoryView>> {
    return this.reserved.list(query);
  }

  @Get(':id')
  @Needs('see contracts')
  async one(@Param('id') id: string): Promise<ReservedCategoryView> {
    return this.reserved.one(id);
  }

  @Post()
  @Needs('make offers')
  async add(@Body() form: ReservedCategoryDto): Promise<ReservedCategoryView> {
    return this.reserved.add(form);
  }

  @Patch(':id')
  @Needs('make offers')
  async change(@Param('id') id: string, @IfMatch() version: number, @Body() form: ChangeReservedCategoryDto): Promise<ReservedCategoryView> {
    return this.reserved.change(id, version, form);
  }

  @Delete(':id')
  @HttpCode(204)
  @Needs('make offers')
  async remove(@Param('id') id: string): Promise<void> {
    await this.reserved.remove(id);
  }
}
