import { Controller, Get, Inject, Param, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import type { RepairOption } from '../../domain/makegoods/repair-options.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { ContractRecords } from '../../sponsorship/contract-records.service.ts';
import { OpenShortfalls } from './open-shortfalls.service.ts';
import { RepairOptionsQuery } from './shortfall.dto.ts';
import type { LineShortfall, OpenShortfall } from './shortfall.dto.ts';
import { Shortfalls } from './shortfalls.service.ts';

@ApiTags('makegoods')
@Controller('api')
export class ShortfallController {
  constructor(
    @Inject(Shortfalls) private readonly shortfalls: Shortfalls,
    @Inject(OpenShortfalls) private readonly open: OpenShortfalls,
    @Inject(ContractRecords) private readonly records: ContractRecords,
  ) {}

  /** Of every signed contract, where nothing is proposed yet. */
  @Get('open-shortfalls')
  @Needs('see contracts')
  async all(): Promise<Listed<OpenShortfall>> {
    return this.open.list();
  }

  /** Line by line: what was missed, what can no longer be given as promised, and how it could be settled. */
  @Get('contracts/:id/shortfalls')
  @Needs('see contracts')
  async ofContract(@Param('id') id: string): Promise<Listed<LineShortfall>> {
    await this.records.load(id);
    const data = await this.shortfalls.ofContract(id);
    return { data, total: data.length };
  }

  /** The remedies for so many reads of one commitment. */
  @Get('contracts/:id/repair-options')
  @Needs('see contracts')
  async options(@Param('id') id: string, @Query() { commitmentId, reads = '1' }: RepairOptionsQuery): Promise<Listed<RepairOption>> {
    await this.records.load(id);
    const data = commitmentId ? await this.shortfalls.optionsFor(id, commitmentId, Number(reads)) : [];
    return { data, total: data.length };
  }
}
