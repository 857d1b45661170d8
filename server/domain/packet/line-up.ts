import type { GameForPacket, PlayerForPacket, TeamForPacket } from './night-for-packet.ts';
import type { LineUpRow, TeamSheet } from './packet.ts';
import type { Segment } from './segment.ts';
import { direction, spoken } from './segment.ts';
import type { Voice } from './voice.ts';

const INSTEAD = {
  name: null,
  numberOnly: 'number only',
  aMember: 'a member of the team',
  silence: 'do not announce',
} as const;

/** The one door by which a player's name enters a packet: shut unless the family chose the name. */
export function rowOf(player: PlayerForPacket): LineUpRow {
  const isNamed = player.announce === 'name';
  return {
    playerId: player.playerId,
    number: player.number,
    name: isNamed ? player.name : null,
    sayAs: isNamed ? player.sayAs : null,
    position: player.position,
    grade: isNamed ? player.grade : null,
    isStarter: player.isStarter,
    instead: INSTEAD[player.announce],
  };
}

/** By number as a number; `0` before `00`. */
function byNumber(one: LineUpRow, other: LineUpRow): number {
  return Number(one.number) - Number(other.number) || one.number.length - other.number.length;
}

export function teamSheet(game: GameForPacket, side: 'home' | 'visitors'): TeamSheet {
  const team: TeamForPacket = game[side];
  return {
    teamId: team.teamId,
    side,
    schoolName: team.schoolName,
    shortName: team.shortName,
    nickname: team.nickname,
    sayAs: team.sayAs,
    headCoach: team.headCoach,
    headCoachSayAs: team.headCoachSayAs,
    firstColour: team.firstColour,
    secondColour: team.secondColour,
    rows: team.roster.map(rowOf).sort(byNumber),
  };
}

/** What is said for one starter: position, number, name, as far as the family allows. */
function starterSegment(row: LineUpRow, voice: Voice): Segment {
  const position = row.position === null ? '' : `${row.position}, `;
  if (row.name !== null) return spoken(`${position}number ${row.number}, ${row.name}.`.replace(/^./, (first) => first.toUpperCase()), voice, row.sayAs, row.name);
  if (row.instead === INSTEAD.numberOnly) return spoken(`${position}number ${row.number}.`.replace(/^./, (first) => first.toUpperCase()), voice);
  if (row.instead === INSTEAD.aMember) return spoken('A member of the team.', voice);
  return direction(`Number ${row.number} is not announced: leave the space and go on`);
}

/**
 * The starters in the order of the roster's numbers, a wait after each, then the head coach.
 *
 * @source common practice, no source
 */
export function lineUpSegments(sheet: TeamSheet, voice: Voice): Segment[] {
  const starters = sheet.rows.filter((row) => row.isStarter);
  const segments = starters.flatMap((row) => [
    starterSegment(row, voice),
    direction('Wait until the starter has greeted the other bench and turned for the official'),
  ]);
  if (starters.length === 0) segments.push(direction('No starters are marked: take them from the official book'));
  if (sheet.headCoach !== null) {
    segments.push(spoken(`${sheet.side === 'home' ? 'Your' : 'The'} head coach, ${sheet.headCoach}.`, voice, sheet.headCoachSayAs, sheet.headCoach));
    segments.push(direction('pause 3'));
  }
  return segments;
}
