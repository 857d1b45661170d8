export type {
  AccountLedgerView, AgingLine, AgingView, IncomeLine, IncomeSplitView, LedgerLine, OfSeller, RollForwardLine, RollForwardView, TrialBalanceLine, TrialBalanceView,
} from '../../server/reports/money/report.dto.ts';
export type { SellerAccount, SponsorAccountLine, SponsorAccountView } from '../../server/billing/statements/sponsor-account.dto.ts';
