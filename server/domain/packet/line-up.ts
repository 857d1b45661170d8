import type { GameForPacket, PlayerForPacket, TeamForPacket } from './night-for-packet.ts';
import type { LineUpRow, TeamSheet } from './packet.ts';

export const INSTEAD = {
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
