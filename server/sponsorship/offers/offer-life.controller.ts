import { Body, Controller, HttpCode, Inject, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import { MovesMoney } from '../../platform/http/unit.interceptor.ts';
import { AcceptOfferDto, DeclineOfferDto, DraftContractDto, ExtendOfferDto } from './offer-life.dto.ts';
import { OfferLife } from './offer-life.service.ts';
import { OfferTakingUp } from './offer-taking-up.service.ts';
import type { OfferView } from './offer-view.ts';
import { OfferViews } from './offer-views.service.ts';

/** What happens to an offer; that it is put to the sponsor stands in planning, which proves its places first. */
@ApiTags('sponsorship')
@Controller('api/offers/:id')
export class OfferLifeController {
  constructor(
    @Inject(OfferLife) private readonly life: OfferLife,
    @Inject(OfferTakingUp) private readonly takingUp: OfferTakingUp,
    @Inject(OfferViews) private readonly views: OfferViews,
  ) {}

  @Post('withdraw')
  @HttpCode(200)
  @Needs('make offers')
  async withdraw(@Param('id') id: string): Promise<OfferView> {
    await this.life.withdraw(id);
    return this.views.one(id);
  }

  @Post('decline')
  @HttpCode(200)
  @Needs('make offers')
  async decline(@Param('id') id: string, @Body() form: DeclineOfferDto): Promise<OfferView> {
    await this.life.decline(id, form);
    return this.views.one(id);
  }

  @Post('extend')
  @HttpCode(200)
  @Needs('make offers')
  async extend(@Param('id') id: string, @Body() form: ExtendOfferDto): Promise<OfferView> {
    await this.life.extend(id, form);
    return this.views.one(id);
  }

  @Post('again')
  @Needs('make offers')
  async offerAgain(@Param('id') id: string): Promise<OfferView> {
    return this.views.one(await this.life.offerAgain(id));
  }

  @Post('accept')
  @HttpCode(200)
  @MovesMoney()
  @Needs('sign contracts')
  async accept(@Param('id') id: string, @Body() form: AcceptOfferDto): Promise<OfferView> {
    await this.takingUp.accept(id, form);
    return this.views.one(id);
  }

  @Post('draft-contract')
  @HttpCode(200)
  @Needs('make offers')
  async draftContract(@Param('id') id: string, @Body() form: DraftContractDto): Promise<OfferView> {
    await this.takingUp.draftContract(id, form);
    return this.views.one(id);
  }
}
