import type { BreakRule, SheetRule, SportFile, SportRules } from '../sport-rules.ts';
import { DEAD_BALL, POSTGAME, PREGAME } from './windows.ts';

const QUARTERS = ['1st quarter', '2nd quarter', '3rd quarter', '4th quarter'];

// NFHS 3-3-1a: a horn fifteen seconds before the end of a time-out and of the break between quarters.
const HORN_SECONDS = 15;
const quarterBreak = (afterPeriod: number): BreakRule => ({ afterPeriod, seconds: 60, longestSeconds: 60, halftime: false, warningSeconds: HORN_SECONDS, mayNotHappen: false });

// IAABO Board 36 timing card: teams and officials are told three minutes before the second half.
const HALFTIME: BreakRule = { afterPeriod: 2, seconds: 600, longestSeconds: 900, halftime: true, warningSeconds: 180, mayNotHappen: false };

const SHEET: SheetRule = {
  periods: QUARTERS,
  overtime: 'overtime',
  totals: ['Final'],
  notes: ['Overtime is four minutes after a break of one. It goes on with the fourth quarter: unused time-outs stay, team fouls are not counted anew.'],
  timeOuts: [{ title: 'Game', full: 3, short: 2 }, { title: 'Each overtime, besides what is left', full: 1, short: 0 }],
  teamFoulBoxes: 8,
  scoring: [{ what: 'Field goal', points: '2' }, { what: 'From behind the arc', points: '3' }, { what: 'Free throw', points: '1' }],
  calls: [
    { when: 'Basket', say: 'Team, number ____, name.' },
    { when: 'Foul', say: 'Foul on team, number ____, name.' },
    { when: 'Free throws', say: 'Team, number ____, name, at the line.' },
    { when: 'Time-out', say: 'Time-out, team. Full, or thirty seconds.' },
    { when: 'Substitution', say: 'Now in for team, number ____, name.' },
    { when: 'End of period', say: 'Visitors’ score first, then home.' },
  ],
};

// IAABO Board 36 scorer card; NFHS Case 10.6.3.
const TECHNICALS = { player: 2, coachDirect: 2, coachTogether: 3 };

const BY_HALVES: SportRules = {
  fromSeason: 2000,
  state: null,
  periods: { name: 'quarter', count: 4, seconds: 480 },
  extraPeriodSeconds: 240,
  breaks: [quarterBreak(1), HALFTIME, quarterBreak(3)],
  windows: [
    PREGAME,
    { kind: 'betweenPeriods', owner: 'us', places: 1, timesPerGame: 2, longestReadSeconds: 30 },
    { kind: 'timeOut', owner: 'us', places: 2, timesPerGame: 4, longestReadSeconds: 25 },
    { kind: 'halftime', owner: 'us', places: 3, timesPerGame: 1, longestReadSeconds: 60 },
    POSTGAME,
    DEAD_BALL,
  ],
  timeOuts: [
    { name: 'full', seconds: 60, perTeam: 3, per: 'game', warningSeconds: HORN_SECONDS },
    { name: 'thirty', seconds: 30, perTeam: 2, per: 'game', warningSeconds: HORN_SECONDS },
    { name: 'full', seconds: 60, perTeam: 1, per: 'extraPeriod', warningSeconds: HORN_SECONDS },
  ],
  // NFHS Case 5.11.7 Situation A.
  forbidsSuccessiveTimeOuts: true,
  teamFouls: {
    countedPer: 'half',
    steps: [
      { fromFoul: 7, award: 'oneAndOne' },
      { fromFoul: 10, award: 'two' },
    ],
    playerLimit: 5,
    technicalLimits: TECHNICALS,
  },
  lineUp: 'visitorsThenHome',
  startersPerTeam: 5,
  afterEachStarter: 'Wait until the starter has greeted the other bench and turned for the official',
  positions: [{ short: 'G', name: 'guard' }, { short: 'PG', name: 'point guard' }, { short: 'SG', name: 'guard' }, { short: 'F', name: 'forward' }, { short: 'SF', name: 'forward' }, { short: 'PF', name: 'forward' }, { short: 'C', name: 'center' }],
  weightClasses: [],
  entryKinds: ['basket', 'foul', 'substitution', 'timeOut', 'periodEnd', 'happening'],
  // NFHS 5-2-1, 5-2-2.
  scores: [
    { what: 'fieldGoal', words: 'Two points', points: 2, perPlayer: true },
    { what: 'threePointer', words: 'Three points', points: 3, perPlayer: true },
    { what: 'freeThrow', words: 'Free throw', points: 1, perPlayer: true },
  ],
  sets: null,
  bouts: [],
  happenings: ['bankShot', 'threePointer', 'dunk'],
  numberRule: 'fingers',
  sheet: { ...SHEET, teamFoulBoxes: 12 },
  source: 'NFHS Basketball Rules 3-3-1a, 3-4-3, 5-2, 5-5-1, 5-7, 5-12, 4-8-1 (before 2023-24)',
};

const BY_QUARTERS: SportRules = {
  ...BY_HALVES,
  fromSeason: 2023,
  teamFouls: { countedPer: 'quarter', steps: [{ fromFoul: 5, award: 'two' }], playerLimit: 5, technicalLimits: TECHNICALS },
  sheet: SHEET,
  source: 'NFHS release of 15 May 2023, Rule 4-8-1; NFHS Basketball Rules 3-3-1a, 3-4-3, 5-2, 5-5-1, 5-7, 5-12',
};

/** Boys and girls play by the same rules. */
export const BASKETBALL: SportFile = { usualMinutes: 90, rules: [BY_HALVES, BY_QUARTERS] };
