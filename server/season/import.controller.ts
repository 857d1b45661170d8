import { Body, Controller, HttpCode, Inject, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/needs.ts';
import { RosterImportDto } from './import.dto.ts';
import type { ImportView } from './import.dto.ts';
import { RosterImport } from './import-rosters.service.ts';

@ApiTags('imports')
@Controller('api/imports')
export class RosterImportController {
  constructor(@Inject(RosterImport) private readonly rosters: RosterImport) {}

  @Post('rosters')
  @HttpCode(200)
  @Needs('import the season')
  async run(@Body() form: RosterImportDto): Promise<ImportView> {
    return this.rosters.run(form);
  }
}
