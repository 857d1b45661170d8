import { numberWarnings } from '../season/legal-numbers.ts';
import { profileAt } from './game-windows.ts';
import type { GameForPacket, NightForPacket, TeamForPacket } from './night-for-packet.ts';
import { mustFix, worthKnowing } from './readiness-line.ts';
import type { Mend } from './readiness-line.ts';
import type { Looked, ReadinessLine } from './readiness.ts';

function numberLines(night: NightForPacket, game: GameForPacket, team: TeamForPacket, who: string, mend: Mend): ReadinessLine[] {
  const warnings = numberWarnings(profileAt(night, game)?.numberRule ?? 'none', team.roster.map((player) => player.number));
  return warnings.map(({ code, numbers, sentence }) =>
    code === 'number-twice'
      ? mustFix('number-clash', `Two players of ${who} wear number ${numbers[0]}.`, mend, game.gameId)
      : worthKnowing(code === 'number-odd' ? 'number-illegal' : code, `${who}: ${sentence}`, mend, game.gameId));
}

function teamLines(night: NightForPacket, game: GameForPacket, team: TeamForPacket): ReadinessLine[] {
  if (team.teamId.endsWith('-to-be-announced')) {
    return [mustFix('no-opponent', `The ${game.level} game has only one team so far.`, { resource: 'games', id: game.gameId, tab: 'edit' }, game.gameId)];
  }
  const mend = { resource: 'teams', id: team.teamId };
  const who = `${team.schoolName} (${game.level})`;
  const lines: ReadinessLine[] = [];
  const profile = profileAt(night, game);
  const starters = team.roster.filter((player) => player.isStarter).length;
  if (team.roster.length === 0) lines.push(mustFix('no-roster', `${who} has no roster.`, mend, game.gameId));
  else if (starters === 0) lines.push(worthKnowing('no-starters', `${who} has no starters marked; the announcer takes them from the book.`, mend, game.gameId));
  else if (profile !== null && starters !== profile.startersPerTeam && profile.lineUp !== 'byWeightClass') {
    lines.push(worthKnowing('line-up-uneven', `${who} has ${starters} starters marked; ${profile.startersPerTeam} start.`, mend, game.gameId));
  }
  if (team.headCoach === null) lines.push(worthKnowing('no-head-coach', `${who} has no head coach to introduce.`, { ...mend, tab: 'edit' }, game.gameId));
  return [...lines, ...numberLines(night, game, team, who, mend)];
}

/** Rosters, line-ups, numbers and head coaches, visitors first. */
export function linesOfTeams({ night }: Looked): ReadinessLine[] {
  return night.games.flatMap((game) => [...teamLines(night, game, game.visitors), ...teamLines(night, game, game.home)]);
}
