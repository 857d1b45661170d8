import type { BreakRule, SportFile, SportRules } from '../sport-rules.ts';
import { DEAD_BALL, POSTGAME, PREGAME } from './windows.ts';

// At most three minutes between sets, the warning at two and a half; sets four and five may not be played.
const setBreak = (afterPeriod: number): BreakRule => ({ afterPeriod, seconds: 180, longestSeconds: 180, halftime: false, warningSeconds: 30, mayNotHappen: afterPeriod > 2 });

const BEST_OF_FIVE: SportRules = {
  fromSeason: 2000,
  state: null,
  periods: { name: 'set', count: 5, seconds: null },
  extraPeriodSeconds: null,
  breaks: [1, 2, 3, 4].map(setBreak),
  windows: [
    PREGAME,
    { kind: 'betweenPeriods', owner: 'us', places: 2, timesPerGame: 2, longestReadSeconds: 45 },
    { kind: 'timeOut', owner: 'us', places: 1, timesPerGame: 4, longestReadSeconds: 25 },
    POSTGAME,
    DEAD_BALL,
  ],
  timeOuts: [{ name: 'full', seconds: 60, perTeam: 2, per: 'set', warningSeconds: 15 }],
  teamFouls: null,
  lineUp: 'visitorsThenHome',
  startersPerTeam: 6,
  afterEachStarter: 'Wait until the starter has greeted the other team at the net',
  positions: [{ short: 'OH', name: 'outside hitter' }, { short: 'RS', name: 'right side' }, { short: 'OPP', name: 'opposite' }, { short: 'MB', name: 'middle blocker' }, { short: 'MH', name: 'middle hitter' }, { short: 'S', name: 'setter' }, { short: 'L', name: 'libero' }, { short: 'DS', name: 'defensive specialist' }],
  weightClasses: [],
  entryKinds: ['score', 'serve', 'substitution', 'timeOut', 'periodEnd', 'happening'],
  scores: [{ what: 'point', words: 'Point', points: 1, perPlayer: false, isSilent: true }],
  sets: { points: 25, decidingPoints: 15, ahead: 2, setsToWin: 3 },
  bouts: [],
  happenings: ['ace', 'block'],
  numberRule: 'upTo99',
  sheet: {
    periods: ['1st set', '2nd set', '3rd set', '4th set', '5th set'],
    overtime: null,
    totals: ['Sets'],
    notes: ['Sets one to four to 25, the fifth to 15; two points ahead, no cap. The match is over with the third set won: sets four and five may not be played.'],
    timeOuts: [1, 2, 3, 4, 5].map((set) => ({ title: `Set ${set}`, full: 2, short: 0 })),
    teamFoulBoxes: 0,
    scoring: [],
    calls: [
      { when: 'Serve', say: 'Serving, team, number ____, name.' },
      { when: 'Ace', say: 'Ace, number ____, name.' },
      { when: 'Kill or block', say: '(Kill) (Block) by number ____, name.' },
      { when: 'Substitution', say: 'Now in for team, number ____, name.' },
      { when: 'Time-out', say: 'Time-out, team.' },
      { when: 'End of set', say: 'Visitors’ score first, then home; then the sets.' },
    ],
  },
  source: 'NFHS Volleyball Rule 11, as its teaching slides give it',
};

/** The state's own regulation says the same numbers; it stands here as an example of a state's row. */
const NEVADA: SportRules = { ...BEST_OF_FIVE, state: 'NV', source: 'Nevada Administrative Code 386.750 (25 points, 15 in the deciding set, two time-outs a set); the rest as for the country' };

export const VOLLEYBALL: SportFile = { usualMinutes: 90, rules: [BEST_OF_FIVE, NEVADA] };
