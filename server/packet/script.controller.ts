import { Body, Controller, Delete, Get, HttpCode, Inject, Param, Patch, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/needs.ts';
import type { Listed } from '../platform/http/lists.ts';
import { IfMatch } from '../platform/http/version.ts';
import { ApproveScriptDto, BringBackDto, ChangeScriptDto, PreviewDto, ScriptDto, ScriptListQuery } from './script.dto.ts';
import type { PreviewView, ScriptVersionView, ScriptView } from './script.dto.ts';
import { ScriptPreview } from './script-preview.service.ts';
import { ScriptService } from './script.service.ts';
import { ScriptVersions } from './script-versions.service.ts';

@ApiTags('packet')
@Controller('api/scripts')
export class ScriptController {
  constructor(
    @Inject(ScriptService) private readonly scripts: ScriptService,
    @Inject(ScriptVersions) private readonly versions: ScriptVersions,
    @Inject(ScriptPreview) private readonly preview: ScriptPreview,
  ) {}

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

  @Post('preview')
  @HttpCode(200)
  @Needs('see packets')
  async show(@Body() form: PreviewDto): Promise<PreviewView> {
    return this.preview.show(form);
  }

  @Get(':id/versions')
  @Needs('see packets')
  async wordings(@Param('id') id: string): Promise<Listed<ScriptVersionView>> {
    return this.versions.list(id);
  }

  @Post(':id/bring-back')
  @HttpCode(200)
  @Needs('change copy')
  async bringBack(@Param('id') id: string, @IfMatch() version: number, @Body() form: BringBackDto): Promise<ScriptView> {
    return this.versions.bringBack(id, version, form.number);
  }

  @Post(':id/approve')
  @HttpCode(200)
  @Needs('change copy')
  async approve(@Param('id') id: string, @Body() form: ApproveScriptDto): Promise<ScriptView> {
    return this.versions.approve(id, form);
  }
}
