import { Body, Controller, Get, Inject, Param, Patch, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/needs.ts';
import type { Listed } from '../platform/http/lists.ts';
import { IfMatch } from '../platform/http/version.ts';
import { ChangeSchoolDto, SchoolDto, SchoolListQuery } from './school.dto.ts';
import type { SchoolView } from './school.dto.ts';
import { SchoolService } from './school.service.ts';

@ApiTags('season')
@Controller('api/schools')
export class SchoolController {
  constructor(@Inject(SchoolService) private readonly schools: SchoolService) {}

  @Get()
  @Needs('see the season')
  async list(@Query() query: SchoolListQuery): Promise<Listed<SchoolView>> {
    return this.schools.list(query);
  }

  @Get(':id')
  @Needs('see the season')
  async one(@Param('id') id: string): Promise<SchoolView> {
    return this.schools.one(id);
  }

  @Post()
  @Needs('change the season')
  async add(@Body() form: SchoolDto): Promise<SchoolView> {
    return this.schools.add(form);
  }

  @Patch(':id')
  @Needs('change the season')
  async change(@Param('id') id: string, @IfMatch() version: number, @Body() form: ChangeSchoolDto): Promise<SchoolView> {
    return this.schools.change(id, version, form);
  }
}
