import { Body, Controller, Delete, Get, HttpCode, Inject, Param, Patch, Post, Put } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/needs.ts';
import { TheVisitor } from '../access/visitor.ts';
import type { Visitor } from '../access/visitor.ts';
import type { Listed } from '../platform/http/lists.ts';
import { IfMatch } from '../platform/http/version.ts';
import type { ImportView } from '../season/import.dto.ts';
import { ChangeHonoursListDto, HonouredStudentsDto, HonoursImportDto, HonoursListDto } from './honours-list.dto.ts';
import type { HonoursListView } from './honours-list.dto.ts';
import { HonoursLists } from './honours-list.service.ts';
import { HonoursImport } from './import-honours.service.ts';

@ApiTags('packet')
@Controller('api')
export class HonoursListController {
  constructor(
    @Inject(HonoursLists) private readonly lists: HonoursLists,
    @Inject(HonoursImport) private readonly files: HonoursImport,
  ) {}

  @Get('nights/:id/honours-lists')
  @Needs('see students')
  async ofNight(@Param('id') nightId: string, @TheVisitor() visitor: Visitor): Promise<Listed<HonoursListView>> {
    return this.lists.ofNight(nightId, visitor.roles);
  }

  @Post('nights/:id/honours-lists')
  @Needs('change students')
  async add(@Param('id') nightId: string, @Body() form: HonoursListDto, @TheVisitor() visitor: Visitor): Promise<HonoursListView> {
    return this.lists.add(nightId, form, visitor.roles);
  }

  @Get('honours-lists/:id')
  @Needs('see students')
  async one(@Param('id') id: string, @TheVisitor() visitor: Visitor): Promise<HonoursListView> {
    return this.lists.one(id, visitor.roles);
  }

  @Patch('honours-lists/:id')
  @Needs('change students')
  async change(@Param('id') id: string, @IfMatch() version: number, @Body() form: ChangeHonoursListDto, @TheVisitor() visitor: Visitor): Promise<HonoursListView> {
    return this.lists.change(id, version, form, visitor.roles);
  }

  @Delete('honours-lists/:id')
  @HttpCode(204)
  @Needs('change students')
  async remove(@Param('id') id: string): Promise<void> {
    return this.lists.remove(id);
  }

  @Put('honours-lists/:id/students')
  @Needs('change students')
  async put(@Param('id') id: string, @IfMatch() version: number, @Body() form: HonouredStudentsDto, @TheVisitor() visitor: Visitor): Promise<HonoursListView> {
    return this.lists.put(id, version, form.students, form.schoolId ?? null, visitor.roles);
  }

  @Post('honours-lists/:id/import')
  @HttpCode(200)
  @Needs('change students')
  async run(@Param('id') id: string, @Body() form: HonoursImportDto, @TheVisitor() visitor: Visitor): Promise<ImportView> {
    return this.files.run(id, form, visitor.roles);
  }
}
