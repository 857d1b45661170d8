import { Body, Controller, Get, HttpCode, Inject, Param, Patch, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/needs.ts';
import type { Listed } from '../platform/http/lists.ts';
import { IfMatch } from '../platform/http/version.ts';
import { ApproveCopyDto, ChangeCopyDto, CheckCopyDto, CopyDto, CopyListQuery, CopyVersionDto, StopCopyDto } from './copy.dto.ts';
import type { CopyCheckView, CopyView } from './copy.dto.ts';
import { CopyService } from './copy.service.ts';

@ApiTags('sponsorship')
@Controller('api/copies')
export class CopyController {
  constructor(@Inject(CopyService) private readonly copies: CopyService) {}

  @Get()
  @Needs('see copy')
  async list(@Query() query: CopyListQuery): Promise<Listed<CopyView>> {
    return this.copies.list(query);
  }

  @Get(':id')
  @Needs('see copy')
  async one(@Param('id') id: string): Promise<CopyView> {
    return this.copies.one(id);
  }

  @Post()
  @Needs('change copy')
  async add(@Body() form: CopyDto): Promise<CopyView> {
    return this.copies.add(form);
  }

  @Post('check')
  @HttpCode(200)
  @Needs('see copy')
  async check(@Body() form: CheckCopyDto): Promise<CopyCheckView> {
    return this.copies.check(form);
  }

  @Patch(':id')
  @Needs('change copy')
  async change(@Param('id') id: string, @IfMatch() version: number, @Body() form: ChangeCopyDto): Promise<CopyView> {
    return this.copies.change(id, version, form);
  }

  @Post(':id/versions')
  @Needs('change copy')
  async addVersion(@Param('id') id: string, @Body() form: CopyVersionDto): Promise<CopyView> {
    return this.copies.addVersion(id, form);
  }

  @Post(':id/versions/:versionId/approve')
  @HttpCode(200)
  @Needs('change copy')
  async approve(@Param('id') id: string, @Param('versionId') versionId: string, @Body() form: ApproveCopyDto): Promise<CopyView> {
    return this.copies.approve(id, versionId, form);
  }

  @Post(':id/stop')
  @HttpCode(200)
  @Needs('change copy')
  async stop(@Param('id') id: string, @Body() form: StopCopyDto): Promise<CopyView> {
    return this.copies.stop(id, form);
  }
}
