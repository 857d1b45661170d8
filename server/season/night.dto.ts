import type { Day } from '../domain/day.ts';
import type { Instant } from '../domain/instant.ts';
import type { GameStatus, Level } from '../domain/season/game.ts';
import { ChoiceField, CountField, DayField, IdField, InstantField, ListOf, OptionalTextField, TextField } from '../platform/http/fields.ts';
import { ListQuery } from '../platform/http/lists.ts';

export const ROLES_OF_NIGHT = [
  'announcer',
  'spotter',
  'scorer',
  'clock',
  'singer',
  'colourGuard',
  'presenter',
  'honouree',
  'official',
  'other',
] as const;
export type RoleOfNight = (typeof ROLES_OF_NIGHT)[number];

export const NIGHT_STATES = ['open', 'signedOff'] as const;
export type NightState = (typeof NIGHT_STATES)[number];

export const ANTHEM_FORMS = ['sung', 'played'] as const;
export type AnthemForm = (typeof ANTHEM_FORMS)[number];

export const FLAG_FORMS = ['colourGuard', 'inPlace'] as const;
export type FlagForm = (typeof FLAG_FORMS)[number];

export class ChangeNightDto {
  @OptionalTextField(120) title?: string | null;
  @InstantField({ optional: true, nullable: true }) doorsAt?: Instant | null;
  @OptionalTextField(1000) note?: string | null;
  @IdField({ optional: true }) venueId?: string;
  @IdField({ optional: true, nullable: true }) floorId?: string | null;
  /** null for what the department usually does */
  @ChoiceField(ANTHEM_FORMS, { optional: true, nullable: true }) anthemForm?: AnthemForm | null;
  @ChoiceField(FLAG_FORMS, { optional: true, nullable: true }) flagForm?: FlagForm | null;
  /** null for what the sport's profile says */
  @CountField(60, 3600, { optional: true, nullable: true }) halftimeSeconds?: number | null;
}

export class PersonOfNightDto {
  @ChoiceField(ROLES_OF_NIGHT) role: RoleOfNight;
  /** one of the department's people, or null for somebody who only comes tonight */
  @IdField({ optional: true, nullable: true }) personId?: string | null;
  @TextField(1, 120) name: string;
  @OptionalTextField(120) sayAs?: string | null;
  @InstantField({ optional: true, nullable: true }) arrivesAt?: Instant | null;
  @OptionalTextField(300) note?: string | null;
}

export class PeopleOfNightDto {
  @ListOf(() => PersonOfNightDto, { most: 100 }) people: PersonOfNightDto[];
}

export class NightListQuery extends ListQuery {
  @DayField({ optional: true }) from?: Day;
  @DayField({ optional: true }) to?: Day;
  @ChoiceField(NIGHT_STATES, { optional: true }) state?: NightState;
  @IdField({ optional: true }) venueId?: string;
}

export interface GameOfNightView {
  id: string;
  label: string;
  level: Level;
  startsAtShown: string;
  status: GameStatus;
}

export interface PersonOfNightView {
  id: string;
  role: RoleOfNight;
  personId: string | null;
  name: string;
  sayAs: string | null;
  arrivesAt: Instant | null;
  note: string | null;
}

export interface NightView {
  id: string;
  heldOn: Day;
  venueId: string;
  venueName: string;
  floorId: string | null;
  floorName: string | null;
  /** its own title, or else the game that the night is for */
  title: string;
  ownTitle: string | null;
  doorsAt: Instant | null;
  note: string | null;
  anthemForm: AnthemForm | null;
  flagForm: FlagForm | null;
  halftimeSeconds: number | null;
  state: NightState;
  games: GameOfNightView[];
  /** the number of the latest issue, or null */
  packetIssued: number | null;
  placementCount: number;
  /** the packet room knows these three; null where it was not asked */
  packetOutOfDate: boolean | null;
  /** why the packet has to be issued again: something changed, or a family chose otherwise about a name in it */
  packetBecause: 'change' | 'choice' | null;
  readiness: { ready: boolean; missing: string[] } | null;
  version: number;
  /** only where one night is asked for */
  people?: PersonOfNightView[];
}
