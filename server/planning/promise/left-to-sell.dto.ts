import type { Cents } from '../../domain/money.ts';
import type { ExtraOfKind, MixedKind } from '../../domain/planning/promise/best-extra.ts';
import type { PlacesOfKind } from '../../domain/planning/promise/left-to-sell.ts';
import type { WindowKind } from '../../domain/season/sport-rules.ts';
import { IdField, PatternField } from '../../platform/http/fields.ts';
import type { CheckedGame } from './promise-check.dto.ts';

/** Reads that still fit beside everything promised. */
export interface Left {
  /** so many fit for certain; null where the time was up before it was worked out */
  readonly left: number | null;
  /** not one more fits, whatever the plan */
  readonly isExact: boolean;
}

export interface LeftOfMonth extends PlacesOfKind, Left {
  readonly readKindId: string;
  readonly readKindName: string;
  /** `2027-01` */
  readonly month: string;
}

export interface LeftOfWindow extends PlacesOfKind, Left {
  readonly readKindId: string;
  readonly windowKind: WindowKind;
}

export interface LeftToSellView {
  seasonId: string;
  /** games of ours that are announced and still to come */
  games: number;
  /** reads promised to others that have no place as it is */
  shortNow: number;
  shortNowSentence: string | null;
  months: LeftOfMonth[];
  /** not those on locked nights, which the sentence names as well */
  fullGames: CheckedGame[];
  fullGamesSentence: string | null;
  /** the best first */
  extras: ExtraOfKind[];
  mix: MixedKind[];
  /** false where the time was up before every kind had its turn */
  isMixWhole: boolean;
  mixCents: Cents;
  mixSentence: string;
}

export class LeftInWindowsQuery {
  /** left out: every read kind */
  @IdField({ optional: true }) readKindId?: string;
  /** left out: all games still to come */
  @PatternField(/^\d{4}-(0[1-9]|1[0-2])$/, 'is no month such as 2027-01', { optional: true }) month?: string;
}
