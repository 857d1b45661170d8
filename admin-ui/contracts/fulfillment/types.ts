export type {
  BenefitFulfillment,
  FulfillmentView as Fulfillment,
  LineForecast,
  LineFulfillment,
  NightFulfillment,
  ReadGiven,
  WindowFulfillment,
} from '../../../server/reports/fulfillment/fulfillment.dto.ts';
