import type { GameForPacket, PacketSettings } from './night-for-packet.ts';
import type { GameSheet } from './packet.ts';
import { teamSheet } from './line-up.ts';

interface SportForm {
  readonly periods: readonly string[];
  readonly overtime: string;
  readonly fullTimeouts: number;
  readonly shortTimeouts: number;
  readonly playerFouls: number;
  readonly teamFouls: number;
  readonly bonusFrom: number | null;
  readonly foulPeriods: readonly string[];
}

const QUARTERS = ['1st quarter', '2nd quarter', '3rd quarter', '4th quarter'];
const plain = (periods: readonly string[], overtime: string, fullTimeouts: number): SportForm => ({
  periods, overtime, fullTimeouts, shortTimeouts: 0, playerFouls: 0, teamFouls: 0, bonusFrom: null, foulPeriods: [],
});

/**
 * The blanks on the table's sheet, per sport.
 *
 * @source NFHS basketball rules 3-2, 4-8-1 (since 2023-24: two free throws from the fifth team foul of a quarter), 5-5, 5-12
 */
const SPORT_FORMS: Readonly<Record<string, SportForm>> = {
  basketball: {
    periods: QUARTERS, overtime: 'overtime', fullTimeouts: 3, shortTimeouts: 2,
    playerFouls: 5, teamFouls: 8, bonusFrom: 5, foulPeriods: QUARTERS,
  },
  football: plain(QUARTERS, 'overtime', 3),
  volleyball: plain(['1st set', '2nd set', '3rd set', '4th set', '5th set'], 'set', 2),
  soccer: plain(['1st half', '2nd half'], 'overtime', 0),
  wrestling: plain(['1st period', '2nd period', '3rd period'], 'sudden victory', 0),
  baseball: plain(['1', '2', '3', '4', '5', '6', '7'], 'extra inning', 0),
  softball: plain(['1', '2', '3', '4', '5', '6', '7'], 'extra inning', 0),
};

function callsOf(countsAreRead: boolean): GameSheet['calls'] {
  const counts = countsAreRead ? ', the player’s ____, the team’s ____ of the quarter' : '';
  return [
    { when: 'Basket', say: 'Team, number ____, name. If it was a three, say so.' },
    { when: 'Foul', say: `Foul on team, number ____, name${counts}.` },
    { when: 'Free throws', say: 'Team, number ____, name, shooting ____.' },
    { when: 'Time-out', say: 'Time-out, team. Full, or thirty seconds.' },
    { when: 'Substitution', say: 'Now in for team, number ____, name.' },
    { when: 'End of period', say: 'Visitors’ score first, then home.' },
  ];
}

const COUNTS_FOR_THE_TABLE = 'For the table — do not read. The official scorer’s count is the count.';
const COUNTS_READ = 'This department reads foul counts. Published announcer guidance (NFHS basketball point of emphasis, 2014-15) says the number of fouls is not announced. The official scorer’s count is the count.';

export function gameSheet(game: GameForPacket, settings: PacketSettings): GameSheet {
  const form = SPORT_FORMS[game.sport] ?? plain(['1st period', '2nd period'], 'overtime', 0);
  return {
    gameId: game.gameId,
    title: `${game.visitors.nickname} at ${game.home.nickname}, ${game.level}`,
    level: game.level,
    startsText: game.startsText,
    visitors: teamSheet(game, 'visitors'),
    home: teamSheet(game, 'home'),
    ...form,
    calls: game.sport === 'basketball' ? callsOf(settings.foulCountsRead) : callsOf(false).filter((call) => call.when !== 'Free throws'),
    countsNote: settings.foulCountsRead ? COUNTS_READ : COUNTS_FOR_THE_TABLE,
    countsAreRead: settings.foulCountsRead,
  };
}
