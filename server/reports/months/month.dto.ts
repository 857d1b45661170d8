import type { MonthState } from '../../domain/ledger/month.ts';
import type { LateNight } from '../../ledger/month-close.entity.ts';
import { FlagField } from '../../platform/http/fields.ts';

export class CloseMonthDto {
  /** the list of nights that are not signed off was looked at */
  @FlagField({ optional: true }) acknowledgesNights?: boolean;
}

export interface MonthView {
  /** `2026-12` */
  id: string;
  firstDay: string;
  state: MonthState;
  closedAt: string | null;
  closedByName: string | null;
  events: number;
  /** nights not signed off: when it was closed, or as of now */
  lateNightCount: number;
  /** whether it is the next one to be closed */
  isNext: boolean;
}

export interface LateNightView extends LateNight {
  /** signed off after the month was closed */
  signedOffSince: boolean;
}

/** Something to look at before a month closes; it hinders nothing. */
export interface CautionView {
  kind: 'undeposited' | 'unapplied' | 'unbilled';
  count: number;
  amountCents: number;
}

export interface MonthPageView extends MonthView {
  /** the day from which it can be closed */
  closesFrom: string;
  lateNights: LateNightView[];
  cautions: CautionView[];
}
