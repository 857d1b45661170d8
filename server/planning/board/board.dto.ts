import type { Day } from '../../domain/day.ts';
import type { PlanSeason } from '../../domain/planning/season.ts';
import { ChoiceField, CountField, FlagField, IdField, ListOf, OptionalTextField, PatternField } from '../../platform/http/fields.ts';

const WINDOW = [/^[a-zA-Z]{1,30}[0-9]{0,2}$/, 'is a window such as pregame or timeOut2'] as const;

/** What is done to reads on the board, one after the other and all or nothing. */
export class BoardChangeDto {
  @ChoiceField(['move', 'add', 'remove', 'pin', 'unpin']) kind: 'move' | 'add' | 'remove' | 'pin' | 'unpin';
  /** of all but an addition: the read, and its version as it was seen */
  @IdField({ optional: true }) placementId?: string;
  @CountField(1, 1_000_000, { optional: true }) version?: number;
  /** of an addition: the commitment or the makegood */
  @IdField({ optional: true }) promiseId?: string;
  /** of an addition or a move */
  @IdField({ optional: true }) gameId?: string;
  @PatternField(...WINDOW, { optional: true }) windowKey?: string;
  /** the first free place where none is named */
  @CountField(1, 20, { optional: true }) place?: number;
  /** of an addition: whether only a person moves it from there */
  @FlagField({ optional: true }) isPinned?: boolean;
}

export class BoardChangesDto {
  @ListOf(() => BoardChangeDto, { least: 1, most: 300 }) changes: BoardChangeDto[];
  /** why competitors may stand beside each other this once; the director's to say */
  @OptionalTextField(300) overrideReason?: string | null;
}

export class MovePlacementDto {
  @IdField() gameId: string;
  @PatternField(...WINDOW) windowKey: string;
  @CountField(1, 20, { optional: true }) place?: number;
  @OptionalTextField(300) overrideReason?: string | null;
}

export interface BoardReadView {
  id: string;
  /** the commitment or the makegood */
  promiseId: string;
  sponsorId: string;
  sponsorName: string;
  readKindName: string;
  gameId: string;
  windowKey: string;
  place: number;
  isPinned: boolean;
  /** the table has logged it, so its place stays */
  isLogged: boolean;
  /** why it stands beside a competitor */
  besideCompetitorReason: string | null;
  version: number;
}

export interface BoardGameView {
  gameId: string;
  nightTitle: string;
  /** why nothing is planned into or out of its night any more */
  lock: { why: 'issued' | 'person'; note: string | null } | null;
}

export interface BoardView {
  seasonId: string;
  seasonName: string;
  /** of the season's plan: whoever changes a placement moves it on */
  planVersion: number;
  today: Day;
  season: PlanSeason;
  games: BoardGameView[];
  reads: BoardReadView[];
  teams: { id: string; name: string }[];
}

export interface BoardChangesView {
  planVersion: number;
  /** the reads as they stand now, by the index of their change; null for one that was taken out */
  reads: (BoardReadView | null)[];
}
