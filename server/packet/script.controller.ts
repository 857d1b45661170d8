import { Body, Controller, Delete, Get, HttpCode, Inject, Param, Patch, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/needs.ts';
import type { Listed } from '../platform/http/lists.ts';
import { IfMatch } from '../platform/http/version.ts';
import { ChangeScriptDto, ScriptDto, ScriptListQuery } from './script.dto.ts';
import type { ScriptView } from './script.dto.ts';
import { ScriptService } from './script.service.ts';

@ApiTags('packet')
@Controller('api/scripts')
export class ScriptController {
  constructor(@Inject(ScriptService) private readonly scripts: ScriptService) {}

  @Get()
  @Needs('see packets')
  async list(@Query() query: ScriptListQuery): Promise<Listed<ScriptView>> {
    return this.scripts.list(query);
  }

  @Get(':id')
  @Needs('see packets')
  async one(@Param('id') id: string): Promise<ScriptView> {
    return this.scripts.one(id);
  }

  @Post()
  @Needs('change copy')
  async add(@Body() form: ScriptDto): Promise<ScriptView> {
    return this.scripts.add(form);
  }

  @Patch(':id')
  @Needs('change copy')
  async change(@Param('id') id: string, @IfMatch() version: number, @Body() form: ChangeScriptDto): Promise<ScriptView> {
    return this.scripts.change(id, version, form);
  }

  @Delete(':id')
  @HttpCode(204)
  @Needs('change copy')
  async remove(@Param('id') id: string): Promise<void> {
    return this.scripts.remove(id);
  }
}
