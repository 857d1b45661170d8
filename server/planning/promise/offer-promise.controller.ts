import { Body, Controller, HttpCode, Inject, Param, Post, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { Needs } from '../../access/needs.ts';
import { OutsideUnit } from '../../platform/http/unit.interceptor.ts';
import { IfMatch } from '../../platform/http/version.ts';
import type { OfferView } from '../../sponsorship/offers/offer-view.ts';
import { untilGone } from './client-gone.ts';
import { ProvenOffers } from './proven-offers.service.ts';
import { PutOfferDto } from './put-offer.dto.ts';

@ApiTags('planning')
@Controller('api/offers/:id')
@OutsideUnit()
export class OfferPromiseController {
  constructor(@Inject(ProvenOffers) private readonly offers: ProvenOffers) {}

  @Post('put')
  @HttpCode(200)
  @Needs('make offers')
  async put(@Param('id') id: string, @Body() form: PutOfferDto, @Res({ passthrough: true }) reply: FastifyReply): Promise<OfferView> {
    return this.offers.put(id, form, untilGone(reply));
  }

  @Post('fit')
  @HttpCode(200)
  @Needs('make offers')
  async fit(@Param('id') id: string, @IfMatch() version: number, @Res({ passthrough: true }) reply: FastifyReply): Promise<OfferView> {
    return this.offers.fit(id, version, untilGone(reply));
  }
}
