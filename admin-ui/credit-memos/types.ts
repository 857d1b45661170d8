export type { CreditMemoLineView as CreditMemoLine, CreditMemoView, WholeCreditMemoView as CreditMemo } from '../../server/billing/credits/credit-memo.dto.ts';
