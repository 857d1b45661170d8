import { SETTLED_ANSWERS } from '../../domain/night/settle.ts';
import type { SettledAnswer, Settlement } from '../../domain/night/settle.ts';
import type { ProposedShortfall } from '../../domain/night/shortfall.ts';
import type { NightTidy } from '../../domain/night/tidy.ts';
import { ChoiceField, CountField, FlagField, IdField, ListOf, OptionalTextField, TextField } from '../../platform/http/fields.ts';
import type { BatchView } from '../log/log.dto.ts';
import { LogBatchDto } from '../log/log.dto.ts';

const MAYBE = { optional: true, nullable: true } as const;
const LONGEST_REASON = 300;

export class DecisionDto {
  @IdField() entryId: string;
  @FlagField() counts: boolean;
}

export class SignOffDto {
  @OptionalTextField(1000) note?: string | null;
  /** people in the seats, as counted or estimated */
  @CountField(0, 200_000, MAYBE) attendance?: number | null;
  /** whether the table's sheet and the official scorer's book agree */
  @FlagField(MAYBE) bookAgrees?: boolean | null;
  @OptionalTextField(300) bookWords?: string | null;
  /** the adult who signs off, where that is not simply who is signed in */
  @OptionalTextField(80) name?: string | null;
  @ListOf(() => DecisionDto, { most: 500 }, { optional: true }) decisions?: DecisionDto[];
  /** why the director signs off before the night's day */
  @OptionalTextField(LONGEST_REASON) overrideReason?: string | null;
}

export class SettleDto {
  @IdField() entryId: string;
  @ChoiceField(SETTLED_ANSWERS) answer: SettledAnswer;
  /** the entry that logged the same, with `sameAs` */
  @IdField(MAYBE) sameAsEntryId?: string | null;
  /** needed after sign-off */
  @OptionalTextField(LONGEST_REASON) reason?: string | null;
}

export class AmendDto extends LogBatchDto {
  @TextField(1, LONGEST_REASON) reason: string;
  @ListOf(() => DecisionDto, { most: 500 }, { optional: true }) decisions?: DecisionDto[];
}

export interface SignOffView {
  night: { id: string; heldOn: string; state: 'signedOff'; games: { id: string; status: string }[] };
  signedOffAt: string;
  signedOffByName: string;
  /** reads that moved from owed to given, or are extra */
  counted: number;
  earnedCents: number;
}

export interface BookedView {
  counted: number;
  released: number;
  earnedCents: number;
}

export type AmendView = BatchView & BookedView;

export interface AmendmentView {
  id: string;
  reason: string;
  at: string;
  byName: string | null;
  /** entries it added, from this number in the log; null where it added none */
  firstNumber: number | null;
  entries: number;
  settled: number;
  counted: number;
  released: number;
  sentence: string;
}

export interface SignedOffView {
  at: string;
  byName: string | null;
  attendance: number | null;
  bookAgrees: boolean | null;
  bookWords: string | null;
  note: string | null;
}

export interface NightTidyView extends NightTidy {
  state: 'open' | 'signedOff';
  signOff: SignedOffView | null;
  amendments: AmendmentView[];
  /** requests that wait or were approved and not read; they expire at sign-off */
  requestsOpen: number;
  /** for those who see contracts; else empty */
  shortfalls: ProposedShortfall[];
}

export function settlementsOf(decisions: readonly DecisionDto[] | undefined): Settlement[] {
  return (decisions ?? []).map(({ entryId, counts }) => ({ entryId: entryId.toLowerCase(), answer: counts ? 'counts' : 'doesNotCount', sameAsEntryId: null }));
}
