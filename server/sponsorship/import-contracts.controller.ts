import { Body, Controller, HttpCode, Inject, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/needs.ts';
import { ImportDto } from '../season/import.dto.ts';
import type { ImportView } from '../season/import.dto.ts';
import { ContractImport } from './import-contracts.service.ts';

@ApiTags('imports')
@Controller('api/imports')
export class ContractImportController {
  constructor(@Inject(ContractImport) private readonly imports: ContractImport) {}

  @Post('contracts')
  @HttpCode(200)
  @Needs('change contracts')
  async run(@Body() form: ImportDto): Promise<ImportView> {
    return this.imports.run(form);
  }
}
