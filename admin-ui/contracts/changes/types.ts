export type { AmountsView as Amounts, ChangePreview, ContractChangeView as ContractChange, MemoPreview } from '../../../server/billing/changes/change.dto.ts';
