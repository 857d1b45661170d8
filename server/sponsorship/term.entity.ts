import { Entity } from 'typeorm';
import type { Day } from '../domain/day.ts';
import type { Cents } from '../domain/money.ts';
import type { BillingPlan } from '../domain/billing/billing-plan.ts';
import type { Pricing } from '../domain/sponsorship/contract-terms.ts';
import { CentsColumn, CountColumn, DayColumn, DepartmentColumn, IdColumn, JsonColumn, RefColumn, TextColumn, VersionColumn } from '../platform/database/columns.ts';

@Entity('term')
export class Term {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() contractId: string;
  @CountColumn() number: number;
  @RefColumn() seasonId: string;
  @DayColumn() startsOn: Day;
  @DayColumn() endsOn: Day;
  @TextColumn() pricing: Pricing;
  @CentsColumn() priceCents: Cents;
  @CentsColumn({ nullable: true }) billAtLeastCents: Cents | null;
  @CentsColumn({ nullable: true }) billAtMostCents: Cents | null;
  @JsonColumn() billingPlan: BillingPlan;
  @DayColumn({ nullable: true }) signedOn: Day | null;
  @TextColumn({ nullable: true }) signedByName: string | null;
  @DayColumn({ nullable: true }) endedOn: Day | null;
  @DayColumn({ nullable: true }) closedOn: Day | null;
  @TextColumn({ insert: false, update: false }) state: 'draft' | 'signed' | 'ended' | 'closed';
  @VersionColumn() version: number;
}
