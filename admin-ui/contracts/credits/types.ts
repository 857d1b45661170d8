export type { ForeseenView as Foreseen } from '../../../server/billing/credits/contract-credits.dto.ts';
export type { MakegoodView as Makegood } from '../../../server/sponsorship/makegoods/makegood.dto.ts';
