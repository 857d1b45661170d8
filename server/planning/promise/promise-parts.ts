import { AskedDeals } from './asked-deals.service.ts';
import { KindsToSell } from './kinds-to-sell.service.ts';
import { LeftToSellController } from './left-to-sell.controller.ts';
import { LeftToSell } from './left-to-sell.service.ts';
import { OfferPromiseController } from './offer-promise.controller.ts';
import { PromiseCheckController } from './promise-check.controller.ts';
import { PromiseChecks } from './promise-checks.service.ts';
import { PromiseSolving } from './promise-solving.service.ts';
import { ProvenOffers } from './proven-offers.service.ts';

export const promiseControllers = [PromiseCheckController, OfferPromiseController, LeftToSellController];
export const promiseServices = [AskedDeals, PromiseChecks, PromiseSolving, ProvenOffers, LeftToSell, KindsToSell];
