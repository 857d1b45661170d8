import { clockAt } from '../domain/instant.ts';
import { DEFAULT_PACKET_SETTINGS, mentionCueKey, placementCueKey } from '../domain/packet/night-for-packet.ts';
import type {
  GameForPacket, MentionForPacket, NextGameForPacket, NightForPacket, PlacementForPacket, TeamForPacket, WordsForPacket,
} from '../domain/packet/night-for-packet.ts';
import { covers } from '../domain/sponsorship/covered-games.ts';
import { shownStarts } from '../domain/season/night.ts';
import type { ShownStart } from '../domain/season/night.ts';
import type { Sport } from '../domain/season/sport-profile.ts';
import { usualMinutesOf } from '../domain/season/usual-length.ts';
import type { CopyToRead } from '../planning/copy-shelf.ts';
import type { GameRow, LaterGameRow, NightRow, PlacementRow, TeamRow } from './night-rows.ts';
import type { NightFacts } from './nights-for-packets.service.ts';
import { clockWords, dayWords, happeningWords, levelWords, packetWindow, presentedBy } from './words-for-packet.ts';

/** One night out of the facts of several, as its packet is composed from. */
export function nightForPacket(night: NightRow, facts: NightFacts): NightForPacket {
  const { department } = facts;
  const games = inOrder(facts.games.filter((game) => game.nightId === night.id), department.zone);
  const people = facts.people.filter((person) => person.nightId === night.id);
  const main = games.find(({ game }) => game.level === 'varsity') ?? games.at(-1);
  const ours = main ? ourTeam(facts.teams.filter((team) => team.gameId === main.game.id)) : null;
  const later = facts.later.filter((game) => game.teamId === ours?.teamId && game.playedOn > night.heldOn);
  const { venueName, venueSayAs, floorName, exitsText, defibrillatorPlace, evacuationText, weatherText, injuryText, threatText } = night;
  return {
    nightId: night.id,
    departmentName: department.name,
    heldOn: night.heldOn,
    dayText: dayWords(night.heldOn, department.locale),
    title: night.title,
    venue: { name: venueName, sayAs: venueSayAs, floorName, exitsText, defibrillatorPlace, evacuationText, weatherText, injuryText, threatText },
    games: games.map(({ game, start }) => gameForPacket(game, start, night, facts)),
    people: people.map(({ role, name, sayAs, arrivesAt }) => ({ role, name, sayAs, arrivesText: arrivesAt === null ? null : clockWords(arrivesAt, department.zone) })),
    nextGame: nextGame(later[0], facts),
    nextHomeGame: nextGame(later.find((game) => game.isHome), facts),
    settings: {
      ...DEFAULT_PACKET_SETTINGS,
      prayer: department.settings.prayerOn,
      foulCountsRead: department.settings.foulCountsRead,
      bankShotMention: department.settings.bankShotMention,
      anthem: people.some((person) => person.role === 'singer') ? 'sung' : 'played',
    },
  };
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
    home: teamForPacket(home, 'Home', facts),
    visitors: teamForPacket(visitors, 'Visitors', facts),
    placements: facts.placements.filter((one) => one.nightId === night.id && one.gameId === game.id).map((one) => placementForPacket(one, night, facts)),
    mentions: facts.mentions
      .filter((one) => covers(one, covered))
      .map((one): MentionForPacket => ({
        ...wordsOf(one, facts.shelf.choose({ ...one, day: night.heldOn, gameId: game.id })),
        cueKey: mentionCueKey(game.id, one.id),
        commitmentId: one.id,
        occurrence: happeningWords(one.occurrence ?? 'bankShot'),
        whose: one.whose,
      })),
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

function placementForPacket(row: PlacementRow, night: NightRow, facts: NightFacts): PlacementForPacket {
  const window = packetWindow(row.windowKey);
  return {
    ...wordsOf(row, facts.shelf.choose({ ...row, day: night.heldOn, preferred: row.copyVersionId })),
    cueKey: placementCueKey(row.gameId, row.windowKey, row.place),
    placementId: row.id,
    window,
    windowKey: row.windowKey.replace(/^timeout/, 'timeOut'),
    place: row.place,
    presents: presentedBy(row.readKindName, window),
  };
}

type Read = Pick<PlacementRow, 'sponsorName' | 'sponsorSayAs' | 'readKindName' | 'defaultSeconds'>;

function wordsOf({ sponsorName, sponsorSayAs, readKindName, defaultSeconds }: Read, copy: CopyToRead): Omit<WordsForPacket, 'cueKey'> {
  return {
    sponsorName,
    sponsorSayAs,
    readKind: readKindName,
    copyText: copy.text,
    copyVersion: copy.number,
    copyLanguage: copy.language,
    copySecondLanguage: copy.secondLanguage,
    copySecondText: copy.secondText,
    isApproved: copy.isApproved,
    fallbackText: copy.fallbackText,
    seconds: defaultSeconds,
  };
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
