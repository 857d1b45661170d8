import { Body, Controller, Get, HttpCode, Inject, Param, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { MovesMoney } from '../../platform/http/unit.interceptor.ts';
import { IfMatch } from '../../platform/http/version.ts';
import { ContractRecords } from '../../sponsorship/contract-records.service.ts';
import { MakegoodProposalListQuery, ProposeMakegoodDto, RecordAnswerDto, SettleProposalDto, ShowProposalDto, WithdrawProposalDto } from './makegood-proposal.dto.ts';
import type { MakegoodProposalLine, MakegoodProposalView, MakegoodTrace } from './makegood-proposal.dto.ts';
import { MakegoodProposals } from './makegood-proposals.service.ts';
import { MakegoodTraces } from './makegood-traces.service.ts';
import { MakegoodProposalViews } from './proposal-views.service.ts';

@ApiTags('makegoods')
@Controller('api')
export class MakegoodProposalController {
  constructor(
    @Inject(MakegoodProposals) private readonly proposals: MakegoodProposals,
    @Inject(MakegoodProposalViews) private readonly views: MakegoodProposalViews,
    @Inject(MakegoodTraces) private readonly makegoods: MakegoodTraces,
    @Inject(ContractRecords) private readonly records: ContractRecords,
  ) {}

  @Get('makegood-proposals')
  @Needs('see contracts')
  async list(@Query() query: MakegoodProposalListQuery): Promise<Listed<MakegoodProposalLine>> {
    return this.views.list(query);
  }

  @Get('makegood-proposals/:id')
  @Needs('see contracts')
  async one(@Param('id') id: string): Promise<MakegoodProposalView> {
    return this.views.one(id);
  }

  /** Those of a contract, each missed read traced to what settled it. */
  @Get('contracts/:id/makegood-proposals')
  @Needs('see contracts')
  async ofContract(@Param('id') id: string): Promise<Listed<MakegoodProposalView>> {
    await this.records.load(id);
    const data = await this.views.ofContract(id);
    return { data, total: data.length };
  }

  /** Of everything that was agreed on a contract, with a proposal or without. */
  @Get('contracts/:id/makegood-traces')
  @Needs('see contracts')
  async traces(@Param('id') id: string): Promise<Listed<MakegoodTrace>> {
    await this.records.load(id);
    return this.makegoods.ofContract(id);
  }

  @Post('makegood-proposals')
  @Needs('change contracts')
  async propose(@Body() form: ProposeMakegoodDto): Promise<MakegoodProposalView> {
    return this.proposals.propose(form);
  }

  @Post('makegood-proposals/:id/show')
  @HttpCode(200)
  @Needs('change contracts')
  async show(@Param('id') id: string, @IfMatch() version: number, @Body() form: ShowProposalDto): Promise<MakegoodProposalView> {
    return this.proposals.show(id, version, form);
  }

  @Post('makegood-proposals/:id/accept')
  @HttpCode(200)
  @MovesMoney()
  @Needs('change contracts')
  async accept(@Param('id') id: string, @IfMatch() version: number, @Body() form: RecordAnswerDto): Promise<MakegoodProposalView> {
    return this.proposals.accept(id, version, form);
  }

  @Post('makegood-proposals/:id/decline')
  @HttpCode(200)
  @Needs('change contracts')
  async decline(@Param('id') id: string, @IfMatch() version: number, @Body() form: RecordAnswerDto): Promise<MakegoodProposalView> {
    return this.proposals.decline(id, version, form);
  }

  @Post('makegood-proposals/:id/withdraw')
  @HttpCode(200)
  @Needs('change contracts')
  async withdraw(@Param('id') id: string, @IfMatch() version: number, @Body() form: WithdrawProposalDto): Promise<MakegoodProposalView> {
    return this.proposals.withdraw(id, version, form);
  }

  @Post('makegood-proposals/:id/settle')
  @HttpCode(200)
  @MovesMoney()
  @Needs('change contracts')
  async settle(@Param('id') id: string, @IfMatch() version: number, @Body() form: SettleProposalDto): Promise<MakegoodProposalView> {
    return this.proposals.settle(id, version, form);
  }
}
