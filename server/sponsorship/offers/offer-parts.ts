import { DealCompany } from './deal-company.service.ts';
import { OfferLifeController } from './offer-life.controller.ts';
import { OfferLife } from './offer-life.service.ts';
import { OfferLine } from './offer-line.entity.ts';
import { OfferPrinting } from './offer-printing.service.ts';
import { OfferPutting } from './offer-putting.service.ts';
import { OfferRecords } from './offer-records.service.ts';
import { OfferTakingUp } from './offer-taking-up.service.ts';
import { OfferViews } from './offer-views.service.ts';
import { OfferController } from './offer.controller.ts';
import { Offer } from './offer.entity.ts';
import { OfferService } from './offer.service.ts';

/** What the module of sponsorship is told of offers. */
export const offerEntities = [Offer, OfferLine];

export const offerControllers = [OfferController, OfferLifeController];

export const offerServices = [OfferRecords, OfferViews, OfferService, OfferPutting, OfferPrinting, OfferLife, OfferTakingUp, DealCompany];
