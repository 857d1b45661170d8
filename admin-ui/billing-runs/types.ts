export type {
  BillingRunView as BillingRun,
  PreviewLineView as PreviewLine,
  PreviewView as Preview,
  RunLineView as RunLine,
  SellerTotal,
  WholeBillingRunView as WholeBillingRun,
} from '../../server/billing/runs/billing-run.dto.ts';
