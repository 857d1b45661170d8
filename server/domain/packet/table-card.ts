import type { CardRow, CardSection, Cue } from './packet.ts';
import type { GameForPacket } from './night-for-packet.ts';

const OCCURRENCE_BOXES = 10;

function rowOf(cue: Cue): CardRow {
  return {
    code: cue.code,
    number: cue.number,
    cueKey: cue.cueKey,
    title: cue.title,
    sponsorName: cue.sponsorName,
    sponsorSayAs: cue.sponsorSayAs,
    seconds: cue.seconds,
    isSponsored: cue.isSponsored,
    boxes: cue.moment === 'mention' ? OCCURRENCE_BOXES : cue.moment === 'periodScore' ? 4 : 1,
  };
}

const WINDOW_TITLES: readonly (readonly [string, string])[] = [
  ['pregame', 'Before the game'],
  ['deadBall', 'When it happens'],
  ['timeout', 'Time-outs, next in line'],
  ['betweenPeriods', 'Between periods'],
  ['halftime', 'Halftime'],
  ['postgame', 'After the game'],
];

/** Which game a section is of: by level, or where two games have one level, by the visitors too. */
function nameOf(game: GameForPacket, games: readonly GameForPacket[]): string {
  const level = game.level.replace(/^./, (first) => first.toUpperCase());
  return games.some((other) => other !== game && other.level === game.level) ? `${level}, ${game.visitors.nickname}` : level;
}

/** The first sheet: every cue of the night with a box to tick, by game and window. */
export function tableCard(cues: readonly Cue[], games: readonly GameForPacket[]): CardSection[] {
  const sections: CardSection[] = [];
  for (const game of games) {
    for (const [window, title] of WINDOW_TITLES) {
      const rows = cues.filter((cue) => cue.gameId === game.gameId && cue.window === window).map(rowOf);
      if (rows.length === 0) continue;
      sections.push({ title: games.length > 1 ? `${nameOf(game, games)}: ${title.toLowerCase()}` : title, rows });
    }
  }
  return sections;
}
