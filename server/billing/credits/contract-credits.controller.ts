import { Body, Controller, HttpCode, Inject, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import { centsOf } from '../../domain/money.ts';
import { MovesMoney } from '../../platform/http/unit.interceptor.ts';
import { LineGames } from '../../sponsorship/line-games.service.ts';
import { AllowanceDto, CreditReadsDto, ForfeitDto, MinimumClaimDto, OverbillingDto, ReleaseDto } from './contract-credits.dto.ts';
import type { CreditedView, ForeseenView } from './contract-credits.dto.ts';
import { ContractCredits } from './contract-credits.service.ts';
import type { Asked } from './contract-credits.service.ts';

/** What is credited, allowed for, forfeited or released on a contract. Each has a preview that changes nothing. */
@ApiTags('billing')
@Controller('api/contracts/:id')
export class ContractCreditsController {
  constructor(
    @Inject(ContractCredits) private readonly credits: ContractCredits,
    @Inject(LineGames) private readonly games: LineGames,
  ) {}

  @Post('credits/preview')
  @HttpCode(200)
  @Needs('bill')
  async previewCredit(@Param('id') id: string, @Body() form: CreditReadsDto): Promise<ForeseenView> {
    return this.credits.preview(id, this.creditOf(form));
  }

  @Post('credits')
  @MovesMoney()
  @Needs('bill')
  async credit(@Param('id') id: string, @Body() form: CreditReadsDto): Promise<CreditedView> {
    return this.credits.book(id, this.creditOf(form));
  }

  @Post('allowances/preview')
  @HttpCode(200)
  @Needs('bill')
  async previewAllowance(@Param('id') id: string, @Body() form: AllowanceDto): Promise<ForeseenView> {
    return this.credits.preview(id, allowanceOf(form));
  }

  @Post('allowances')
  @MovesMoney()
  @Needs('bill')
  async allow(@Param('id') id: string, @Body() form: AllowanceDto): Promise<CreditedView> {
    return this.credits.book(id, allowanceOf(form));
  }

  @Post('overbilling-credits/preview')
  @HttpCode(200)
  @Needs('bill')
  async previewOverbilling(@Param('id') id: string, @Body() form: OverbillingDto): Promise<ForeseenView> {
    return this.credits.preview(id, overbillingOf(form));
  }

  @Post('overbilling-credits')
  @MovesMoney()
  @Needs('bill')
  async creditOverbilling(@Param('id') id: string, @Body() form: OverbillingDto): Promise<CreditedView> {
    return this.credits.book(id, overbillingOf(form));
  }

  @Post('forfeits/preview')
  @HttpCode(200)
  @Needs('bill')
  async previewForfeit(@Param('id') id: string, @Body() form: ForfeitDto): Promise<ForeseenView> {
    return this.credits.preview(id, this.forfeitOf(form));
  }

  @Post('forfeits')
  @MovesMoney()
  @Needs('bill')
  async forfeit(@Param('id') id: string, @Body() form: ForfeitDto): Promise<CreditedView> {
    return this.credits.book(id, this.forfeitOf(form));
  }

  @Post('releases/preview')
  @HttpCode(200)
  @Needs('bill')
  async previewRelease(@Param('id') id: string, @Body() form: ReleaseDto): Promise<ForeseenView> {
    return this.credits.preview(id, this.releaseOf(form));
  }

  @Post('releases')
  @MovesMoney()
  @Needs('bill')
  async release(@Param('id') id: string, @Body() form: ReleaseDto): Promise<CreditedView> {
    return this.credits.book(id, this.releaseOf(form));
  }

  @Post('minimum-claims/preview')
  @HttpCode(200)
  @Needs('bill')
  async previewMinimum(@Param('id') id: string, @Body() form: MinimumClaimDto): Promise<ForeseenView> {
    return this.credits.preview(id, minimumOf(form));
  }

  @Post('minimum-claims')
  @MovesMoney()
  @Needs('bill')
  async claimMinimum(@Param('id') id: string, @Body() form: MinimumClaimDto): Promise<CreditedView> {
    return this.credits.book(id, minimumOf(form));
  }

  private creditOf({ commitmentId, gameId, count, reason, on, insists }: CreditReadsDto): Asked {
    const happening: Asked['happening'] = async (position, memoId) => ({ kind: 'readsCredited', ...(await this.games.of(position, commitmentId, gameId)), count, memoId });
    return { happening, reason, on, insists, givesBack: true };
  }

  private forfeitOf({ commitmentId, gameId, count, reason, notice, on }: ForfeitDto): Asked {
    return { happening: async (position) => ({ kind: 'readsForfeited', ...(await this.games.of(position, commitmentId, gameId)), count, notice }), reason, on };
  }

  private releaseOf({ commitmentId, gameId, count, reason, on }: ReleaseDto): Asked {
    return { happening: async (position) => ({ kind: 'readsReleased', ...(await this.games.of(position, commitmentId, gameId)), count }), reason, on };
  }
}

function allowanceOf({ amountCents, reason, on, insists }: AllowanceDto): Asked {
  return { happening: (_, memoId) => ({ kind: 'allowanceGiven', amountCents: centsOf(amountCents), memoId }), reason, on, insists, givesBack: true };
}

function overbillingOf({ reason, on }: OverbillingDto): Asked {
  return { happening: (_, memoId) => ({ kind: 'overbillingCredited', memoId }), reason, on };
}

function minimumOf({ reason, on }: MinimumClaimDto): Asked {
  return { happening: () => ({ kind: 'minimumClaimed' }), reason, on };
}
