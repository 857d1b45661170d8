import { Entity } from 'typeorm';
import type { BillingPlan } from '../../domain/billing/billing-plan.ts';
import type { Day } from '../../domain/day.ts';
import type { Cents } from '../../domain/money.ts';
import type { CancelledGamePolicy, PriceVariesWith, Pricing } from '../../domain/sponsorship/contract-terms.ts';
import type { StoredOfferState } from '../../domain/sponsorship/offers/offer-moves.ts';
import { CentsColumn, CountColumn, DayColumn, DepartmentColumn, FlagColumn, IdColumn, JsonColumn, RefColumn, TextColumn, VersionColumn } from '../../platform/database/columns.ts';

/** What is put to a sponsor, until it is signed or lapses. */
@Entity('offer')
export class Offer {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @TextColumn({ nullable: true }) number: string | null;
  @RefColumn() sponsorId: string;
  @RefColumn() sellerId: string;
  @RefColumn({ nullable: true }) payerId: string | null;
  @RefColumn() seasonId: string;
  @RefColumn({ nullable: true }) packageId: string | null;
  @TextColumn() title: string;
  @TextColumn() pricing: Pricing;
  @CentsColumn() priceCents: Cents;
  @CentsColumn({ nullable: true }) billAtLeastCents: Cents | null;
  @CentsColumn({ nullable: true }) billAtMostCents: Cents | null;
  @TextColumn() priceVariesWith: PriceVariesWith;
  @TextColumn() cancelledGamePolicy: CancelledGamePolicy;
  @JsonColumn() billingPlan: BillingPlan;
  @DayColumn() startsOn: Day;
  @DayColumn() endsOn: Day;
  @CountColumn() years: number;
  @CountColumn() increaseBasisPoints: number;
  /** the last day on which it holds */
  @DayColumn() lapsesOn: Day;
  @FlagColumn() holdsInventory: boolean;
  @DayColumn({ nullable: true }) putOn: Day | null;
  @TextColumn({ nullable: true }) beyondPlacesReason: string | null;
  @RefColumn({ nullable: true }) beyondPlacesPersonId: string | null;
  @DayColumn({ nullable: true }) declinedOn: Day | null;
  @TextColumn({ nullable: true }) declinedReason: string | null;
  @DayColumn({ nullable: true }) withdrawnOn: Day | null;
  @RefColumn({ nullable: true }) contractId: string | null;
  @TextColumn({ nullable: true }) note: string | null;
  @TextColumn({ insert: false, update: false }) state: StoredOfferState;
  @VersionColumn() version: number;
}
