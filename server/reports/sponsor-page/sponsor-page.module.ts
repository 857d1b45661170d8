import { Module } from '@nestjs/common';
import { BillingModule } from '../../billing/billing.module.ts';
import { MakegoodsModule } from '../../makegoods/makegoods.module.ts';
import { SponsorshipModule } from '../../sponsorship/sponsorship.module.ts';
import { AnswersOfSponsorController } from './answers-of-sponsor.controller.ts';
import { ContactsOfSchool } from './contacts-of-school.service.ts';
import { ContractsOfSponsor } from './contracts-of-sponsor.service.ts';
import { FulfillmentModule } from '../fulfillment/fulfillment.module.ts';
import { MoneyOfSponsor } from './money-of-sponsor.service.ts';
import { NightsOfSponsor } from './nights-of-sponsor.service.ts';
import { OffersToSponsor } from './offers-to-sponsor.service.ts';
import { OwnPapersController } from './own-papers.controller.ts';
import { OwnPapers } from './own-papers.service.ts';
import { SponsorPageController } from './sponsor-page.controller.ts';
import { SponsorPageService } from './sponsor-page.service.ts';

/** What a sponsor sees by its link. */
@Module({
  imports: [SponsorshipModule, BillingModule, MakegoodsModule, FulfillmentModule],
  controllers: [SponsorPageController, AnswersOfSponsorController, OwnPapersController],
  providers: [SponsorPageService, ContractsOfSponsor, MoneyOfSponsor, NightsOfSponsor, OwnPapers, OffersToSponsor, ContactsOfSchool],
})
export class SponsorPageModule {}
