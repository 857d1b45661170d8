export type { CheckedLine, CheckedMonth, PromiseCheckView as PromiseCheck } from '../../server/planning/promise/promise-check.dto.ts';
export type { LeftOfMonth, LeftOfWindow, LeftToSellView as LeftToSell } from '../../server/planning/promise/left-to-sell.dto.ts';
