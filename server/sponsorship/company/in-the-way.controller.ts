import { Controller, Get, Inject, Param } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { ContractRecords } from '../contract-records.service.ts';
import { OfferRecords } from '../offers/offer-records.service.ts';
import { CompanyCheck } from './company-check.service.ts';
import type { ObstacleView } from './company.dto.ts';

/** What is in the way of a deal, before it is made. */
@ApiTags('sponsorship')
@Controller('api')
export class InTheWayController {
  constructor(
    @Inject(CompanyCheck) private readonly company: CompanyCheck,
    @Inject(ContractRecords) private readonly contracts: ContractRecords,
    @Inject(OfferRecords) private readonly offers: OfferRecords,
  ) {}

  @Get('contracts/:id/in-the-way')
  @Needs('see contracts')
  async ofContract(@Param('id') id: string): Promise<Listed<ObstacleView>> {
    const { contract, term } = await this.contracts.load(id);
    return this.listed(await this.company.obstaclesOf({ kind: 'contract', dealId: id, sponsorId: contract.sponsorId, startsOn: term.startsOn, endsOn: term.endsOn }));
  }

  @Get('offers/:id/in-the-way')
  @Needs('see contracts')
  async ofOffer(@Param('id') id: string): Promise<Listed<ObstacleView>> {
    const { offer } = await this.offers.load(id);
    return this.listed(await this.company.obstaclesOf({ kind: 'offer', dealId: id, sponsorId: offer.sponsorId, startsOn: offer.startsOn, endsOn: offer.endsOn }));
  }

  private listed(data: ObstacleView[]): Listed<ObstacleView> {
    return { data, total: data.length };
  }
}
