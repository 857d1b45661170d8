import { Module } from '@nestjs/common';
import { SponsorshipModule } from '../../sponsorship/sponsorship.module.ts';
import { FulfillmentModule } from '../fulfillment/fulfillment.module.ts';
import { RenewalSuggestions } from './renewal-suggestions.service.ts';
import { RenewalsBoardController } from './renewals-board.controller.ts';
import { RenewalsBoard } from './renewals-board.service.ts';

@Module({ imports: [SponsorshipModule, FulfillmentModule], controllers: [RenewalsBoardController], providers: [RenewalsBoard, RenewalSuggestions] })
export class RenewalsBoardModule {}
