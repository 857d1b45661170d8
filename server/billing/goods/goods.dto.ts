import type { Day } from '../../domain/day.ts';
import { CentsField, ChoiceField, CountField, DayField, IdField, ListOf, TextField } from '../../platform/http/fields.ts';

export class GoodsPromiseDto {
  @TextField(1, 120) what: string;
  @CountField(1, 100_000) quantity: number;
  /** what one is worth, fairly, at signing */
  @CentsField({ most: 100_000_000_00 }) unitCents: number;
  @DayField({ optional: true, nullable: true }) dueOn?: Day | null;
}

export class GoodsPromisesDto {
  @ListOf(() => GoodsPromiseDto, { most: 50 }) promises: GoodsPromiseDto[];
}

export class GoodsDeliveryDto {
  @IdField() promiseId: string;
  @DayField() receivedOn: Day;
  @CountField(1, 100_000) quantity: number;
  /** who took it, or what shows that it came */
  @TextField(1, 300) proof: string;
}

export const SHORTAGE_ANSWERS = ['billed', 'allowed'] as const;

export class GoodsShortageDto {
  @ChoiceField(SHORTAGE_ANSWERS) settles: (typeof SHORTAGE_ANSWERS)[number];
  @DayField({ optional: true }) settledOn?: Day;
}

export interface GoodsPromiseView {
  id: string;
  what: string;
  quantity: number;
  unitCents: number;
  dueOn: Day | null;
  received: number;
  missing: number;
  isLate: boolean;
}

export interface GoodsDeliveryView {
  id: string;
  promiseId: string;
  what: string;
  receivedOn: Day;
  quantity: number;
  proof: string;
  amountCents: number;
}

export interface GoodsView {
  contractId: string;
  isInKind: boolean;
  isSigned: boolean;
  priceCents: number;
  receivedCents: number;
  /** what neither goods nor an invoice nor an allowance has met */
  openCents: number;
  /** of the term; promises change with it while it is a draft */
  version: number;
  promises: GoodsPromiseView[];
  deliveries: GoodsDeliveryView[];
}
