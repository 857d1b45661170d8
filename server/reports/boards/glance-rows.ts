import type { Day } from '../../domain/day.ts';
import type { GameOfNight, PlacedReads } from '../../domain/reports/unplaced-reads.ts';

export interface NightRow {
  nightId: string;
  heldOn: Day;
  label: string;
  isSignedOff: boolean;
  packetIssued: number | null;
}

/** The nights of a season with a game of ours at home that is announced and will be held. */
export const NIGHTS = `select night.id as "nightId", night.held_on as "heldOn",
    coalesce(night.title, (select string_agg(distinct school.short_name, ', ') from game_night
      join game on game.department_id = $1 and game.id = game_night.game_id and game.announced and game.status not in ('cancelled', 'postponed')
      join game_participant on game_participant.department_id = $1 and game_participant.game_id = game.id and not game_participant.is_home
      join team on team.department_id = $1 and team.id = game_participant.team_id
      join school on school.department_id = $1 and school.id = team.school_id
      where game_night.department_id = $1 and game_night.night_id = night.id), venue.name) as label,
    exists (select from sign_off where sign_off.department_id = $1 and sign_off.night_id = night.id) as "isSignedOff",
    (select max(number) from packet_issue where packet_issue.department_id = $1 and packet_issue.night_id = night.id) as "packetIssued"
  from night join venue on venue.department_id = $1 and venue.id = night.venue_id
  where night.department_id = $1 and night.id = any(array(
    select game_night.night_id from game_night
      join game on game.department_id = $1 and game.id = game_night.game_id
      join game_participant on game_participant.department_id = $1 and game_participant.game_id = game.id and game_participant.is_home
      join team on team.department_id = $1 and team.id = game_participant.team_id
      join school on school.department_id = $1 and school.id = team.school_id
    where game_night.department_id = $1 and game.season_id = $2 and game.announced and game.status not in ('cancelled', 'postponed') and school.is_ours)::uuid[])
  order by night.held_on, night.id`;

export const GAMES = `select game_night.night_id as "nightId", game.id, game.season_id as "seasonId", game.played_on as "playedOn", game.moved_from_on as "movedFromOn", game.status, game.class, game.level, game.announced,
    bool_or(game_participant.is_home and school.is_ours) as "isHome", coalesce(array_agg(team.id) filter (where school.is_ours), '{}')::uuid[] as "teamIds"
  from game_night join game on game.department_id = $1 and game.id = game_night.game_id
  join game_participant on game_participant.department_id = $1 and game_participant.game_id = game.id
  join team on team.department_id = $1 and team.id = game_participant.team_id
  join school on school.department_id = $1 and school.id = team.school_id
  where game_night.department_id = $1 and game_night.night_id = any($2::uuid[]) and game.status not in ('cancelled', 'postponed')
  group by game_night.night_id, game.id, game.season_id, game.played_on, game.moved_from_on, game.status, game.class, game.level, game.announced`;
export type GameRow = GameOfNight;

/** Makegoods are placed beside what is promised, and stand for nothing of this night. */
export const PLACED = `select night_id as "nightId", game_id as "gameId", commitment_id as "commitmentId", count(*)::int as reads from placement
  where department_id = $1 and night_id = any($2::uuid[]) and makegood_id is null group by night_id, game_id, commitment_id`;
export type PlacedRow = PlacedReads;
