import type { SheetRule, SportRules, TeamFoulRule } from '../season/sport-rules.ts';
import type { GameForPacket, PacketSettings } from './night-for-packet.ts';
import type { GameSheet } from './packet.ts';
import { teamSheet } from './line-up.ts';

/** Room for a sport the house does not know. */
const PLAIN: SheetRule = {
  periods: ['1st period', '2nd period'], overtime: 'overtime', totals: ['Final'], notes: [], timeOuts: [], teamFoulBoxes: 0, scoring: [],
  calls: [{ when: 'Score', say: 'Team, number ____, name.' }, { when: 'End of period', say: 'Visitors’ score first, then home.' }],
};

const STRETCHES = { quarter: ['1st quarter', '2nd quarter', '3rd quarter', '4th quarter'], half: ['1st half', '2nd half'] } as const;
const MARKS = { oneAndOne: '1+1', two: '2' } as const;

const COUNTS_FOR_THE_TABLE = 'For the table — do not read. The official scorer’s count is the count.';
const COUNTS_READ = 'This department reads foul counts. Published announcer guidance (NFHS basketball point of emphasis, 2014-15) says the number of fouls is not announced. The official scorer’s count is the count.';

/** Counts of fouls stand in the calls only where the department chose to read them. */
function callsOf(sheet: SheetRule, fouls: TeamFoulRule | null, countsAreRead: boolean): GameSheet['calls'] {
  if (!countsAreRead || fouls === null) return sheet.calls;
  return sheet.calls.map((call) =>
    call.when === 'Foul' ? { ...call, say: call.say.replace(/\.$/, `, the player’s ____, the team’s ____ of the ${fouls.countedPer}.`) } : call,
  );
}

/**
 * The blanks on the table's sheet, as the sport's rules want them.
 *
 * @param rules null for a sport the house does not know
 */
export function gameSheet(game: GameForPacket, settings: PacketSettings, rules: SportRules | null): GameSheet {
  const sheet = rules?.sheet ?? PLAIN;
  const fouls = rules?.teamFouls ?? null;
  return {
    gameId: game.gameId,
    title: `${game.visitors.nickname} at ${game.home.nickname}, ${game.level}`,
    level: game.level,
    startsText: game.startsText,
    visitors: teamSheet(game, 'visitors'),
    home: teamSheet(game, 'home'),
    periods: sheet.periods,
    overtime: sheet.overtime,
    totals: sheet.totals,
    notes: sheet.notes,
    bouts: rules?.weightClasses ?? [],
    scoring: sheet.scoring,
    fullTimeouts: sheet.timeOuts[0]?.full ?? 0,
    shortTimeouts: sheet.timeOuts[0]?.short ?? 0,
    timeOuts: sheet.timeOuts,
    playerFouls: fouls?.playerLimit ?? 0,
    teamFouls: sheet.teamFoulBoxes,
    bonusFrom: fouls?.steps[0]?.fromFoul ?? null,
    bonusMarks: fouls?.steps.map(({ fromFoul, award }) => ({ fromFoul, mark: MARKS[award] })) ?? [],
    foulPeriods: fouls === null ? [] : STRETCHES[fouls.countedPer],
    calls: callsOf(sheet, fouls, settings.foulCountsRead),
    countsNote: settings.foulCountsRead ? COUNTS_READ : COUNTS_FOR_THE_TABLE,
    countsAreRead: settings.foulCountsRead,
  };
}
