import type { DepartmentView } from '../access/department.dto.ts';
import { clockAt } from '../domain/instant.ts';
import { anthemForms } from '../domain/packet/anthem-form.ts';
import { mainGameOf } from '../domain/packet/variables-of-night.ts';
import type {
  GameForPacket, HonoursForPacket, NextGameForPacket, NightForPacket, PacketSettings, TeamForPacket,
} from '../domain/packet/night-for-packet.ts';
import { covers } from '../domain/sponsorship/covered-games.ts';
import { shownStarts } from '../domain/season/night.ts';
import type { ShownStart } from '../domain/season/night.ts';
import type { Sport } from '../domain/season/sport-profile.ts';
import { usualMinutesOf } from '../domain/season/usual-length.ts';
import type { HonouredRow } from './night-fact-rows.ts';
import type { GameRow, LaterGameRow, NightRow, PersonRow, TeamRow } from './night-rows.ts';
import type { NightFacts } from './nights-for-packets.service.ts';
import { mentionForPacket, placementForPacket } from './reads-for-packet.ts';
import { clockWords, dayWords, levelWords } from './words-for-packet.ts';

/** One night out of the facts of several, as its packet is composed from. */
export function nightForPacket(night: NightRow, facts: NightFacts): NightForPacket {
  const { department } = facts;
  const games = inOrder(facts.games.filter((game) => game.nightId === night.id), department.zone);
  const people = facts.people.filter((person) => person.nightId === night.id);
  const main = mainGameOf(games.map(({ game }) => game));
  const ours = main ? ourTeam(facts.teams.filter((team) => team.gameId === main.id)) : null;
  const later = facts.later.filter((game) => game.teamId === ours?.teamId && game.playedOn > night.heldOn);
  const { venueId, venueName, venueSayAs, floorName, exitsText, defibrillatorPlace, evacuationText, weatherText, injuryText, threatText } = night;
  return {
    nightId: night.id,
    departmentName: department.name,
    heldOn: night.heldOn,
    dayText: dayWords(night.heldOn, department.locale),
    title: night.title,
    venue: { venueId, name: venueName, sayAs: venueSayAs, floorName, exitsText, defibrillatorPlace, evacuationText, weatherText, injuryText, threatText },
    games: games.map(({ game, start }) => gameForPacket(game, start, night, facts)),
    people: people.map(({ role, name, sayAs, arrivesAt, note }) => ({ role, name, sayAs, note, arrivesText: arrivesAt === null ? null : clockWords(arrivesAt, department.zone) })),
    nextGame: nextGame(later[0], facts),
    nextHomeGame: nextGame(later.find((game) => game.isHome), facts),
    honours: honoursOf(facts.honours.filter((row) => row.nightId === night.id)),
    issuedNumber: facts.issued.find((issue) => issue.nightId === night.id)?.number ?? null,
    settings: settingsFor(night, people, department),
  };
}

/** What the night says for itself goes before what the department usually does. */
function settingsFor(night: NightRow, people: readonly PersonRow[], { settings }: DepartmentView): PacketSettings {
  const roles = new Set<string>(people.map((person) => person.role));
  const announcer = people.find((person) => person.role === 'announcer');
  return {
    prayer: settings.prayerOn,
    foulCountsRead: settings.foulCountsRead,
    bankShotMention: settings.bankShotMention,
    ...anthemForms({ anthem: night.anthemForm, flag: night.flagForm }, roles, { anthem: settings.anthemForm, flag: settings.flagForm }),
    officialsIntroduced: settings.officialsIntroduced,
    paper: settings.paper,
    halftimeSeconds: night.halftimeSeconds,
    timeOutsReliedOn: settings.timeOutsReliedOn,
    wordsPerMinute: announcer?.wordsPerMinute ?? settings.wordsPerMinute,
    state: settings.state,
    schoolDayEndsAt: settings.schoolDayEndsAt,
  };
}

function honoursOf(rows: readonly HonouredRow[]): HonoursForPacket[] {
  return [...new Set(rows.map((row) => row.honoursListId))].map((id) => {
    const own = rows.filter((row) => row.honoursListId === id);
    const { honoursListId, title, kind, window, secondsEach, openingText } = own[0]!;
    const students = own.flatMap(({ playerId, name, sayAs, announce, escorts, line }) => (playerId === null ? [] : [{ playerId, name, sayAs, announce, escorts, line }]));
    return { honoursListId, title, kind, window, secondsEach, openingText, students };
  });
}

function inOrder(games: readonly GameRow[], zone: string): { game: GameRow; start: ShownStart }[] {
  const starts = shownStarts(
    games.map((game) => ({
      id: game.id,
      startsClock: game.startsAt === null ? null : clockAt(game.startsAt, zone),
      startsAfterGameId: game.startsAfterGameId,
      startsAfterMinutes: game.startsAfterMinutes,
      usualMinutes: usualMinutesOf(game.sport as Sport, game.level),
    })),
  );
  const clock = (start: ShownStart): string => start.clock ?? '99:99';
  return games
    .map((game, place) => ({ game, start: starts[place]! }))
    .toSorted((a, b) => (clock(a.start) < clock(b.start) ? -1 : clock(a.start) > clock(b.start) ? 1 : a.game.place - b.game.place));
}

function ourTeam(teams: readonly TeamRow[]): TeamRow | null {
  return teams.find((team) => team.isOurs && team.isHome) ?? teams.find((team) => team.isOurs) ?? null;
}

function gameForPacket(game: GameRow, start: ShownStart, night: NightRow, facts: NightFacts): GameForPacket {
  const teams = facts.teams.filter((team) => team.gameId === game.id);
  const home = teams.find((team) => team.isHome) ?? ourTeam(teams) ?? teams[0];
  const visitors = teams.find((team) => team !== home);
  const covered = { ...game, isHome: teams.some((team) => team.isHome && team.isOurs), teamIds: teams.filter((team) => team.isOurs).map((team) => team.teamId) };
  return {
    gameId: game.id,
    sport: game.sport,
    level: levelWords(game.level),
    startsText: start.words,
    startsClock: start.floating ? null : start.clock,
    startsAfterMinutes: start.floating ? (game.startsAfterMinutes ?? 0) : null,
    usualMinutes: usualMinutesOf(game.sport as Sport, game.level),
    ourTeamIds: covered.teamIds,
    owners: { windowsOwnedBy: game.windowsOwnedBy, windowOwners: game.windowOwners },
    movedSinceIssue: facts.issued.some((issue) => issue.nightId === night.id && issue.movedGameIds.includes(game.id)),
    home: teamForPacket(home, 'Home', facts),
    visitors: teamForPacket(visitors, 'Visitors', facts),
    placements: facts.placements.filter((one) => one.nightId === night.id && one.gameId === game.id).map((one) => placementForPacket(one, night, facts)),
    mentions: facts.mentions.filter((one) => covers(one, covered) && (one.heldOn === null || night.heldOn < one.heldOn)).map((one) => mentionForPacket(one, game.id, night, facts)),
  };
}

function teamForPacket(team: TeamRow | undefined, side: string, facts: NightFacts): TeamForPacket {
  if (!team) {
    const unknown = { schoolName: `${side} to be announced`, shortName: side, nickname: side, sayAs: null, headCoach: null, headCoachSayAs: null };
    return { teamId: `${side.toLowerCase()}-to-be-announced`, ...unknown, firstColour: '#444444', secondColour: '#BBBBBB', roster: [] };
  }
  const { teamId, schoolName, shortName, nickname, sayAs, firstColour, secondColour, headCoach, headCoachSayAs } = team;
  const roster = (facts.players.get(teamId) ?? []).map(({ teamId: _, ...player }) => player);
  return { teamId, schoolName, shortName, nickname, sayAs, firstColour, secondColour, headCoach, headCoachSayAs, roster };
}

function nextGame(game: LaterGameRow | undefined, { department }: NightFacts): NextGameForPacket | null {
  if (!game) return null;
  const opponentName = game.opponentName ?? 'an opponent to be announced';
  return {
    opponentName,
    isHome: game.isHome,
    level: levelWords(game.level),
    dayText: dayWords(game.playedOn, department.locale, false),
    clockText: game.startsAt === null ? 'a time to be announced' : clockWords(game.startsAt, department.zone),
    placeName: game.venueName ?? opponentName,
  };
}
