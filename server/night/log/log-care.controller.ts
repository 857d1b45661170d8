import { Body, Controller, Get, HttpCode, Inject, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { MovesMoney } from '../../platform/http/unit.interceptor.ts';
import { HeldFileDto, SettleAsideDto } from './aside.dto.ts';
import type { AsideView, ImportView } from './aside.dto.ts';
import { Asides } from './aside.service.ts';
import { LogImport } from './log-import.service.ts';

/** What the director does about entries that did not come in by themselves. */
@ApiTags('night')
@Controller('api/nights/:id/log')
export class LogCareController {
  constructor(
    @Inject(LogImport) private readonly imports: LogImport,
    @Inject(Asides) private readonly asides: Asides,
  ) {}

  @Post('import')
  @HttpCode(200)
  @MovesMoney()
  @Needs('amend a night')
  async import(@Param('id') id: string, @Body() form: HeldFileDto): Promise<ImportView> {
    return this.imports.take(id, form);
  }

  @Get('aside')
  @Needs('amend a night')
  async aside(@Param('id') id: string): Promise<Listed<AsideView>> {
    const data = await this.asides.of(id);
    return { data, total: data.length };
  }

  @Post('aside/:asideId/settle')
  @HttpCode(200)
  @MovesMoney()
  @Needs('amend a night')
  async settle(@Param('id') id: string, @Param('asideId') asideId: string, @Body() form: SettleAsideDto): Promise<AsideView> {
    return this.asides.settle(id, asideId, form);
  }
}
