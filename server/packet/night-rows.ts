import type { Day } from '../domain/day.ts';
import type { Instant } from '../domain/instant.ts';
import type { Announce } from '../domain/packet/night-for-packet.ts';
import type { GameClass, GameStatus, Level } from '../domain/season/game.ts';
import type { GameOwners, WindowOwner } from '../domain/season/sport-profile.ts';

/** Rows that packets of several nights are made of; `$2` is the list of ids each statement asks for. */

export interface NightRow {
  id: string;
  heldOn: Day;
  title: string | null;
  anthemForm: 'sung' | 'played' | null;
  flagForm: 'colourGuard' | 'inPlace' | null;
  halftimeSeconds: number | null;
  venueId: string;
  venueName: string;
  venueSayAs: string | null;
  floorName: string | null;
  exitsText: string | null;
  defibrillatorPlace: string | null;
  evacuationText: string | null;
  weatherText: string | null;
  injuryText: string | null;
  threatText: string | null;
}

export const NIGHTS = `select night.id, night.held_on as "heldOn", night.title, night.anthem_form as "anthemForm", night.flag_form as "flagForm",
    night.halftime_seconds as "halftimeSeconds", venue.id as "venueId", venue.name as "venueName", venue.say_as as "venueSayAs", floor.name as "floorName",
    venue.exits_text as "exitsText", venue.defibrillator_place as "defibrillatorPlace", venue.evacuation_text as "evacuationText",
    venue.weather_text as "weatherText", venue.injury_text as "injuryText", venue.threat_text as "threatText"
  from night join venue on venue.department_id = night.department_id and venue.id = night.venue_id
  left join floor on floor.department_id = night.department_id and floor.id = night.floor_id
  where night.department_id = $1 and night.id = any($2::uuid[])`;

export interface GameRow {
  nightId: string;
  id: string;
  place: number;
  sport: string;
  level: Level;
  class: GameClass;
  status: GameStatus;
  announced: boolean;
  startsAt: Instant | null;
  startsAfterGameId: string | null;
  startsAfterMinutes: number | null;
  playedOn: Day;
  movedFromOn: Day | null;
  windowsOwnedBy: WindowOwner;
  windowOwners: GameOwners['windowOwners'];
}

export const GAMES = `select game_night.night_id as "nightId", game.id, game_night.place, game.sport, game.level, game.class, game.status, game.announced,
    game.starts_at as "startsAt", game.starts_after_game_id as "startsAfterGameId", game.starts_after_minutes as "startsAfterMinutes",
    game.played_on as "playedOn", game.moved_from_on as "movedFromOn",
    game.windows_owned_by as "windowsOwnedBy", game.window_owners as "windowOwners"
  from game_night join game on game.department_id = game_night.department_id and game.id = game_night.game_id
  where game_night.department_id = $1 and game_night.night_id = any($2::uuid[]) and game.announced and game.status not in ('cancelled', 'postponed')
  order by game_night.place, game.starts_at nulls last, game.id`;

export interface TeamRow {
  gameId: string;
  place: number;
  isHome: boolean;
  isOurs: boolean;
  teamId: string;
  schoolName: string;
  shortName: string;
  nickname: string;
  sayAs: string | null;
  firstColour: string;
  secondColour: string;
  headCoach: string | null;
  headCoachSayAs: string | null;
}

export const TEAMS = `select game_participant.game_id as "gameId", game_participant.place, game_participant.is_home as "isHome", school.is_ours as "isOurs", team.id as "teamId",
    school.name as "schoolName", school.short_name as "shortName", school.nickname, school.say_as as "sayAs", school.first_colour as "firstColour",
    school.second_colour as "secondColour", team.head_coach as "headCoach", team.head_coach_say_as as "headCoachSayAs"
  from game_participant join team on team.department_id = $1 and team.id = game_participant.team_id
  join school on school.department_id = $1 and school.id = team.school_id
  where game_participant.department_id = $1 and game_participant.game_id = any($2::uuid[]) order by game_participant.place`;

export interface PlayerRow {
  teamId: string;
  playerId: string;
  number: string;
  name: string;
  sayAs: string | null;
  position: string | null;
  grade: string | null;
  isStarter: boolean;
  announce: Announce;
}

// An erased name is announced as nobody's.
export const PLAYERS = `select roster_entry.team_id as "teamId", player.id as "playerId", roster_entry.number, player.name, player.say_as as "sayAs", roster_entry.position,
    roster_entry.grade, roster_entry.is_starter as "isStarter", case when player.erased_at is null then player.announce when player.announce = 'name' then 'aMember' else player.announce end as announce
  from roster_entry join player on player.department_id = roster_entry.department_id and player.id = roster_entry.player_id
  where roster_entry.department_id = $1 and roster_entry.team_id = any($2::uuid[])
  order by length(roster_entry.number), roster_entry.number, player.id`;

export interface PlacementRow {
  id: string;
  nightId: string;
  gameId: string;
  windowKey: string;
  place: number;
  copyVersionId: string | null;
  commitmentId: string;
  sponsorId: string;
  sponsorName: string;
  sponsorSayAs: string | null;
  readKindId: string;
  readKindName: string;
  defaultSeconds: number;
  /** what is handed over, where the kind is a presentation */
  presents: string | null;
}

// What is on hold by then, or has ended before, is not read.
export const PLACEMENTS = `select placement.id, placement.night_id as "nightId", placement.game_id as "gameId", placement.window_key as "windowKey", placement.place,
    placement.copy_version_id as "copyVersionId", placement.commitment_id as "commitmentId", sponsor.id as "sponsorId", sponsor.name as "sponsorName", sponsor.say_as as "sponsorSayAs",
    read_kind.id as "readKindId", read_kind.name as "readKindName", read_kind.default_seconds as "defaultSeconds", read_kind.presents
  from placement join commitment on commitment.department_id = placement.department_id and commitment.id = placement.commitment_id
  join contract on contract.department_id = commitment.department_id and contract.id = commitment.contract_id
  join sponsor on sponsor.department_id = contract.department_id and sponsor.id = contract.sponsor_id
  left join makegood on makegood.department_id = placement.department_id and makegood.id = placement.makegood_id
  join read_kind on read_kind.department_id = commitment.department_id and read_kind.id = coalesce(makegood.replacement_read_kind_id, commitment.read_kind_id)
  join term on term.department_id = commitment.department_id and term.id = commitment.term_id
  join night on night.department_id = placement.department_id and night.id = placement.night_id
  where placement.department_id = $1 and placement.night_id = any($2::uuid[]) and (term.ended_on is null or night.held_on < term.ended_on)
    and not exists (select from contract_hold as hold where hold.department_id = $1 and hold.contract_id = contract.id and hold.lifts_hold_id is null
      and hold.held_on <= night.held_on
      and not exists (select from contract_hold as lift where lift.department_id = $1 and lift.lifts_hold_id = hold.id))
  order by placement.window_key, placement.place, placement.id`;

export interface PersonRow {
  nightId: string;
  role: string;
  name: string;
  sayAs: string | null;
  arrivesAt: Instant | null;
  note: string | null;
  /** the rate they measured themselves, where they are of the department */
  wordsPerMinute: number | null;
}

export const PEOPLE = `select person_of_night.night_id as "nightId", role, name, say_as as "sayAs", arrives_at as "arrivesAt", note, membership.words_per_minute as "wordsPerMinute"
  from person_of_night left join membership on membership.department_id = $1 and membership.person_id = person_of_night.person_id
  where person_of_night.department_id = $1 and person_of_night.night_id = any($2::uuid[])
  order by array_position(array['announcer','spotter','scorer','clock','singer','colourGuard','presenter','honouree','official','other'], role), name, person_of_night.id`;

export interface LaterGameRow {
  id: string;
  playedOn: Day;
  startsAt: Instant | null;
  level: Level;
  /** the team of ours it was asked for */
  teamId: string;
  isHome: boolean;
  opponentName: string | null;
  venueName: string | null;
}

/** Games still to come of some teams; `$3` is the first day that counts. */
export const LATER_GAMES = `select game.id, game.played_on as "playedOn", game.starts_at as "startsAt", game.level, mine.team_id as "teamId", mine.is_home as "isHome",
    (select string_agg(school.short_name, ', ' order by other.place) from game_participant as other
      join team on team.department_id = $1 and team.id = other.team_id join school on school.department_id = $1 and school.id = team.school_id
      where other.department_id = $1 and other.game_id = game.id and other.team_id <> mine.team_id) as "opponentName",
    (select venue.name from game_night join night on night.department_id = $1 and night.id = game_night.night_id join venue on venue.department_id = $1 and venue.id = night.venue_id
      where game_night.department_id = $1 and game_night.game_id = game.id order by night.held_on desc, night.id limit 1) as "venueName"
  from game_participant as mine join game on game.department_id = $1 and game.id = mine.game_id
  where mine.department_id = $1 and mine.team_id = any($2::uuid[]) and game.played_on > $3 and game.status in ('planned', 'underWay', 'played', 'suspended')
  order by game.played_on, game.starts_at nulls last, game.id`;
