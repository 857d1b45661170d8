import type { NightForPacket, TeamForPacket } from './night-for-packet.ts';
import { someOf, worthKnowing } from './readiness-line.ts';
import type { Mend } from './readiness-line.ts';
import type { Looked, ReadinessLine } from './readiness.ts';

/** Letters a name may have and still stand on its line of the roster. @source common practice, no source */
export const LONGEST_NAME = 40;

const RIGHT_TO_LEFT = /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}\u200f\u202b\u202e\u2067]/u;
const EMOJI = /\p{Extended_Pictographic}|[\u{1f1e6}-\u{1f1ff}]/u;
/** What the packet's typeface has: the Latin script of any language, and the marks of names. */
const HAS = /^[\p{Script=Latin}\p{Script=Common}\p{Script=Inherited}]*$/u;

interface Named {
  readonly name: string;
  readonly sayAs: string | null;
  /** read aloud, so that somebody has to know how it is said */
  readonly isSaid: boolean;
}

interface Group {
  readonly who: string;
  readonly mend: Mend;
  readonly gameId: string | null;
  readonly names: readonly Named[];
}

function teamGroup(team: TeamForPacket, level: string, gameId: string): Group {
  const coach = team.headCoach === null ? [] : [{ name: team.headCoach, sayAs: team.headCoachSayAs, isSaid: true }];
  const players = team.roster.filter((player) => player.announce === 'name').map(({ name, sayAs }) => ({ name, sayAs, isSaid: true }));
  return { who: `${team.schoolName} (${level})`, mend: { resource: 'teams', id: team.teamId }, gameId, names: [...players, ...coach] };
}

const SAID_ROLES = new Set(['singer', 'presenter', 'honouree', 'official']);

function groupsOf(night: NightForPacket): Group[] {
  const reads = night.games.flatMap((game) => [...game.placements, ...game.mentions]);
  const sponsors = new Map(reads.map((read) => [read.sponsorName, read]));
  return [
    ...night.games.flatMap((game) => [teamGroup(game.visitors, game.level, game.gameId), teamGroup(game.home, game.level, game.gameId)]),
    {
      who: 'People of the night', mend: { resource: 'nights', id: night.nightId, tab: 'people' }, gameId: null,
      names: night.people.map(({ role, name, sayAs }) => ({ name, sayAs, isSaid: SAID_ROLES.has(role) })),
    },
    ...(night.honours ?? []).map((list): Group => ({
      who: list.title, mend: { resource: 'nights', id: night.nightId, tab: 'honours' }, gameId: null,
      names: list.students.filter((student) => student.announce === 'name').map(({ name, sayAs }) => ({ name, sayAs, isSaid: true })),
    })),
    ...[...sponsors.values()].map((read): Group => ({
      who: read.sponsorName, mend: { resource: 'sponsors', id: read.facts?.sponsorId ?? null }, gameId: null,
      names: [{ name: read.sponsorName, sayAs: read.sponsorSayAs, isSaid: false }],
    })),
  ];
}

const CHECKS: readonly { code: string; isOdd: (name: string) => boolean; sentence: (names: string) => string }[] = [
  { code: 'name-right-to-left', isOdd: (name) => RIGHT_TO_LEFT.test(name), sentence: (names) => `written from right to left, which the packet cannot set: ${names}. Write it in Latin letters.` },
  { code: 'name-with-emoji', isOdd: (name) => EMOJI.test(name) && !RIGHT_TO_LEFT.test(name), sentence: (names) => `a picture in a name is not printed: ${names}.` },
  { code: 'name-glyph-missing', isOdd: (name) => !HAS.test(name) && !RIGHT_TO_LEFT.test(name), sentence: (names) => `the packet’s typeface lacks letters of ${names}. Write it in Latin letters.` },
  { code: 'name-long', isOdd: (name) => [...name].length > LONGEST_NAME, sentence: (names) => `longer than ${LONGEST_NAME} letters, so it may take two lines: ${names}.` },
];

/** Names nobody has written how to say, and names that are hard to set. A name is looked up where a dictionary is at hand. */
export function linesOfNames({ night, wordsNotKnown }: Looked): ReadinessLine[] {
  return groupsOf(night).flatMap(({ who, mend, gameId, names }) => {
    const unsaid = names.filter(({ name, sayAs, isSaid }) => isSaid && sayAs === null && wordsNotKnown(name).length > 0).map(({ name }) => name);
    const odd = CHECKS.flatMap(({ code, isOdd, sentence }) => {
      const found = names.filter(({ name }) => isOdd(name)).map(({ name }) => name);
      return found.length === 0 ? [] : [worthKnowing(code, `${who}: ${sentence(someOf(found))}`, mend, gameId)];
    });
    return [...(unsaid.length === 0 ? [] : [worthKnowing('name-without-say-as', `${who}: nobody has written how to say ${someOf(unsaid)}.`, mend, gameId)]), ...odd];
  });
}
