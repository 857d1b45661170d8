import type { Day } from '../../domain/day.ts';
import type { GameStatus } from '../../domain/season/game.ts';
import type { MovedLine } from '../../domain/planning/moves/moved-lines.ts';
import { ChoiceField, ClockField, DayField, OptionalTextField } from '../../platform/http/fields.ts';

const MAY_BE_NULL = { optional: true, nullable: true } as const;

export const PREVIEWED_MOVES = ['postpone', 'reschedule', 'suspend', 'cancel'] as const;
export type PreviewedMove = (typeof PREVIEWED_MOVES)[number];

/** A move as its own form asks for it; nothing is done. */
export class MovePreviewDto {
  @ChoiceField(PREVIEWED_MOVES) kind: PreviewedMove;
  @DayField(MAY_BE_NULL) to?: Day | null;
  @ClockField(MAY_BE_NULL) clock?: string | null;
  @OptionalTextField(300) reason?: string | null;
  /** the day on which it was called off; today without it */
  @DayField(MAY_BE_NULL) on?: Day | null;
}

export interface MovedLineView extends MovedLine {
  /** planned reads of this line that lose their place */
  placesLost: number;
  /** those that keep it on another night or day */
  placesMoved: number;
  /** those that stay where they are */
  placesKept: number;
}

export interface MoveMemo {
  netCents: number;
  taxCents: number;
  grossCents: number;
  invoiceNumbers: string[];
}

/** What the move does to one contract. */
export interface MovedContract {
  contractId: string;
  number: string | null;
  title: string;
  sponsorId: string;
  sponsorName: string;
  sellerName: string;
  lines: MovedLineView[];
  /** what the credited reads were worth, billed or not */
  creditedCents: number;
  /** credit memos that would be written, for what of it is billed */
  memos: MoveMemo[];
  /** what is still to bill after it less what was before; below zero it is less */
  toBillChangeCents: number;
}

export interface NightEffect {
  nightId: string;
  venueName: string;
  heldOn: string;
  /** where its day changes with the game */
  newHeldOn: string | null;
  /** it was made for this game alone and goes with it */
  isGone: boolean;
  /** games still to be held on it */
  gamesLeft: number;
  /** private links of its table that are given out and not over */
  tableLinks: { label: string | null; notBeforeAt: string; expiresAt: string }[];
}

/** Reads that would find no place any more, of the whole season. */
export interface SeasonShortfall {
  readsBefore: number;
  readsAfter: number;
  /** both are proven: no plan has fewer */
  isProven: boolean;
  promises: { promiseId: string; sponsorName: string; readKindName: string; readsBefore: number; readsAfter: number }[];
  /** why, in sentences */
  because: string[];
}

export interface MovePreview {
  gameId: string;
  seasonId: string;
  label: string;
  kind: PreviewedMove;
  before: { status: GameStatus; playedOn: string };
  after: { status: GameStatus; playedOn: string };
  contracts: MovedContract[];
  nights: NightEffect[];
  shortfall: SeasonShortfall;
}
