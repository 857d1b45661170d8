import { PartialType } from '@nestjs/swagger';
import type { Day } from '../domain/day.ts';
import type { Instant } from '../domain/instant.ts';
import { GAME_CLASSES, GAME_STATUSES, LEVELS } from '../domain/season/game.ts';
import type { GameClass, GameMove, GameStatus, Level } from '../domain/season/game.ts';
import type { Sport, WindowKind, WindowOwner } from '../domain/season/sport-profile.ts';
import { ChoiceField, ClockField, CountField, DayField, FlagField, IdField, IdsField, ListOf, OptionalTextField, TextField } from '../platform/http/fields.ts';
import { ListQuery, QueryFlag } from '../platform/http/lists.ts';

export const WINDOW_OWNERS: readonly WindowOwner[] = ['us', 'conference', 'association'];

const MAY_BE_NULL = { optional: true, nullable: true } as const;

export class GameDto {
  @IdField({ optional: true }) id?: string;
  @IdField() seasonId: string;
  @ChoiceField(LEVELS) level: Level;
  @ChoiceField(GAME_CLASSES, { optional: true }) class?: GameClass;
  @FlagField({ optional: true }) announced?: boolean;
  /** one of them is designated home; null only where nobody is, as at a meet of guests */
  @IdField(MAY_BE_NULL) homeTeamId?: string | null;
  @IdsField(63) visitorTeamIds: string[];
  @DayField() playedOn: Day;
  /** on the department's wall clock; null while the time is open or floats */
  @ClockField(MAY_BE_NULL) startsAtClock?: string | null;
  @IdField(MAY_BE_NULL) startsAfterGameId?: string | null;
  @CountField(0, 600, MAY_BE_NULL) startsAfterMinutes?: number | null;
  @IdField(MAY_BE_NULL) venueId?: string | null;
  @IdField(MAY_BE_NULL) floorId?: string | null;
  /** a night to join; without it the night of the venue and day is joined, or made */
  @IdField(MAY_BE_NULL) nightId?: string | null;
  @IdField(MAY_BE_NULL) hostSchoolId?: string | null;
  @ChoiceField(WINDOW_OWNERS, { optional: true }) windowsOwnedBy?: WindowOwner;
  @OptionalTextField(100) outsideId?: string | null;
}

export class ScoreDto {
  @IdField() teamId: string;
  @CountField(0, 9999) score: number;
}

export class ChangeGameDto extends PartialType(GameDto) {
  /** corrects the score of a game that was played */
  @ListOf(() => ScoreDto, { most: 64 }, { optional: true }) scores?: ScoreDto[];
}

export class PlayDto {
  @ListOf(() => ScoreDto, { most: 64 }) scores: ScoreDto[];
}

export class SuspendDto {
  @OptionalTextField(300) reason?: string | null;
}

export class PostponeDto {
  @TextField(1, 300) reason: string;
  /** the new day; without it the game waits for one */
  @DayField(MAY_BE_NULL) to?: Day | null;
  @ClockField(MAY_BE_NULL) clock?: string | null;
}

export class ResumeDto {
  @IdField(MAY_BE_NULL) nightId?: string | null;
  @DayField(MAY_BE_NULL) day?: Day | null;
  @ClockField(MAY_BE_NULL) clock?: string | null;
  @OptionalTextField(300) reason?: string | null;
}

export class CancelDto {
  @TextField(1, 300) reason: string;
  /** the day on which it was called off; today without it */
  @DayField(MAY_BE_NULL) on?: Day | null;
}

export class GameListQuery extends ListQuery {
  @IdField({ optional: true }) seasonId?: string;
  @ChoiceField(GAME_STATUSES, { optional: true }) status?: GameStatus;
  @ChoiceField(LEVELS, { optional: true }) level?: Level;
  @DayField({ optional: true }) from?: Day;
  @DayField({ optional: true }) to?: Day;
  @IdField({ optional: true }) nightId?: string;
  @IdField({ optional: true }) teamId?: string;
  @QueryFlag() isHome?: boolean;
}

export interface ParticipantView {
  id: string;
  teamId: string;
  place: number;
  isHome: boolean;
  score: number | null;
  teamName: string;
  schoolName: string;
  schoolId: string;
  nickname: string;
  isOurs: boolean;
}

export interface GameView {
  id: string;
  seasonId: string;
  sport: Sport;
  level: Level;
  class: GameClass;
  status: GameStatus;
  announced: boolean;
  startsAt: Instant | null;
  playedOn: Day;
  startsAfterGameId: string | null;
  startsAfterMinutes: number | null;
  hostSchoolId: string | null;
  windowsOwnedBy: WindowOwner;
  windowOwners: Partial<Record<WindowKind, WindowOwner>>;
  movedFromOn: Day | null;
  statusNote: string | null;
  outsideId: string | null;
  version: number;
  participants: ParticipantView[];
  nightIds: string[];
  nightId: string | null;
  venueId: string | null;
  venueName: string | null;
  floorId: string | null;
  isHome: boolean;
  label: string;
  startsAtShown: string;
  /** the clock it is expected to begin at, floating starts too; null while nobody can say */
  startsClock: string | null;
  hasLog: boolean;
  moves: GameMove[];
  /** only where one game is asked for */
  warnings?: { code: string; sentence: string }[];
}

/** "Herons at Kestrels"; where nobody is home the teams stand beside each other. */
export function gameLabel(participants: readonly Pick<ParticipantView, 'isHome' | 'nickname' | 'schoolName' | 'teamName'>[]): string {
  const doubled = new Set(participants.map((one) => one.nickname)).size < participants.length;
  const nameOf = (one: (typeof participants)[number]): string => (doubled ? `${one.schoolName} ${one.teamName}` : one.nickname);
  const home = participants.find((one) => one.isHome);
  const visitors = participants.filter((one) => !one.isHome);
  const names = visitors.length > 3 ? `${visitors.length} teams` : visitors.map(nameOf).join(', ');
  if (!home) return names || 'No teams yet';
  return names ? `${names} at ${nameOf(home)}` : nameOf(home);
}
