import type { SheetRule, SportFile, SportRules } from '../sport-rules.ts';
import { POSTGAME, PREGAME } from './windows.ts';

/** From memory, boys; states choose among several sets, so a state's row carries its own. */
const WEIGHT_CLASSES = '106 113 120 126 132 138 144 150 157 165 175 190 215 285'.split(' ');

const SHEET: SheetRule = {
  periods: [],
  overtime: null,
  totals: ['Team score'],
  notes: ['Three periods of two minutes. A tie goes to sudden victory of one minute, two tie-breakers of thirty seconds, then an ultimate tie-breaker.'],
  timeOuts: [],
  teamFoulBoxes: 0,
  scoring: [
    { what: 'Takedown', points: '3' },
    { what: 'Escape', points: '1' },
    { what: 'Reversal', points: '2' },
    { what: 'Near fall, 2 / 3 / 4 seconds', points: '2 / 3 / 4' },
    { what: 'Team: fall, forfeit, default, disqualification', points: '6' },
    { what: 'Team: technical fall (15 ahead)', points: '5' },
    { what: 'Team: major decision (8 to 14 ahead)', points: '4' },
    { what: 'Team: decision', points: '3' },
  ],
  calls: [
    { when: 'Before a bout', say: 'At ____ pounds: for team, name; for team, name. On deck, ____ pounds.' },
    { when: 'After a bout', say: 'At ____ pounds the winner, by ________, team, name.' },
    { when: 'Team score', say: 'Visitors’ score first, then home.' },
  ],
};

const BEFORE_2024: SportRules = {
  fromSeason: 2000,
  state: null,
  periods: { name: 'period', count: 3, seconds: 120 },
  extraPeriodSeconds: 60,
  breaks: [],
  // Between two bouts no clock runs; half a minute, and six of them relied on, are common practice, no source.
  windows: [PREGAME, { kind: 'betweenPeriods', owner: 'us', places: 1, timesPerGame: 6, longestReadSeconds: 20, usualSeconds: 30 }, POSTGAME],
  timeOuts: [],
  teamFouls: null,
  lineUp: 'byWeightClass',
  startersPerTeam: WEIGHT_CLASSES.length,
  afterEachStarter: 'Wait until the wrestlers have met on the mat',
  positions: [],
  weightClasses: WEIGHT_CLASSES,
  entryKinds: ['bout', 'happening'],
  scores: [],
  sets: null,
  // Team points of a dual meet: from memory.
  bouts: [
    { how: 'decision', words: 'decision', teamPoints: 3 },
    { how: 'majorDecision', words: 'major decision', teamPoints: 4 },
    { how: 'technicalFall', words: 'technical fall', teamPoints: 5 },
    { how: 'fall', words: 'fall', teamPoints: 6 },
    { how: 'forfeit', words: 'forfeit', teamPoints: 6 },
    { how: 'default', words: 'default', teamPoints: 6 },
    { how: 'disqualification', words: 'disqualification', teamPoints: 6 },
    { how: 'doubleForfeit', words: 'double forfeit', teamPoints: 0, isWithoutWinner: true },
  ],
  happenings: ['fall'],
  numberRule: 'none',
  sheet: { ...SHEET, scoring: SHEET.scoring.map((row) => (row.what === 'Takedown' ? { ...row, points: '2' } : row.what.startsWith('Near fall') ? { what: 'Near fall', points: '2 / 3' } : row)) },
  source: 'NFHS Wrestling: three periods of two minutes; overtime, weight classes, team points and scoring before 2024-25 from memory',
};

const FROM_2024: SportRules = {
  ...BEFORE_2024,
  fromSeason: 2024,
  sheet: { ...SHEET, notes: [...SHEET.notes, 'Near fall: a fifth point where the opponent is hurt or bleeds after four were earned.'] },
  source: 'NFHS release of 25 April 2024 (takedown three, near fall two to four, technical fall at fifteen); overtime, weight classes and team points from memory',
};

export const WRESTLING: SportFile = { usualMinutes: 120, rules: [BEFORE_2024, FROM_2024] };
