import { Body, Controller, HttpCode, Inject, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/needs.ts';
import { ImportDto } from '../season/import.dto.ts';
import type { ImportView } from '../season/import.dto.ts';
import { ScheduleImportService } from './schedule-import.service.ts';

@ApiTags('imports')
@Controller('api/imports')
export class ScheduleImportController {
  constructor(@Inject(ScheduleImportService) private readonly schedules: ScheduleImportService) {}

  @Post('schedule')
  @HttpCode(200)
  @Needs('import the season')
  async run(@Body() form: ImportDto): Promise<ImportView> {
    return this.schedules.run(form);
  }
}
