import type { BreakRule, SportFile, SportRules } from '../sport-rules.ts';
import { DEAD_BALL, POSTGAME, PREGAME } from './windows.ts';

// The change of sides has no clock in the rules; 90 seconds, silent for the last 30, is common practice, no source.
// Under a run rule the game may end with the fifth inning, so the breaks after it may not happen.
const inningBreak = (afterPeriod: number): BreakRule => ({ afterPeriod, seconds: 90, longestSeconds: 120, halftime: false, warningSeconds: 30, mayNotHappen: afterPeriod > 4 });

/** Softball is played by these rules too, as far as a microphone is concerned. */
export const SEVEN_INNINGS: SportRules = {
  fromSeason: 2000,
  state: null,
  periods: { name: 'inning', count: 7, seconds: null },
  extraPeriodSeconds: null,
  breaks: [1, 2, 3, 4, 5, 6].map(inningBreak),
  windows: [PREGAME, { kind: 'betweenPeriods', owner: 'us', places: 1, timesPerGame: 4, longestReadSeconds: 25 }, POSTGAME, DEAD_BALL],
  timeOuts: [{ name: 'conference', seconds: 60, perTeam: 3, per: 'game', warningSeconds: 15 }],
  teamFouls: null,
  lineUp: 'battingOrder',
  startersPerTeam: 9,
  afterEachStarter: 'Wait until the starter stands on the baseline',
  positions: [
    { short: 'P', name: 'pitcher' }, { short: 'C', name: 'catcher' }, { short: '1B', name: 'first base' }, { short: '2B', name: 'second base' }, { short: '3B', name: 'third base' },
    { short: 'SS', name: 'shortstop' }, { short: 'LF', name: 'left field' }, { short: 'CF', name: 'center field' }, { short: 'RF', name: 'right field' }, { short: 'DH', name: 'designated hitter' },
    { short: 'DP', name: 'designated player' }, { short: 'FLEX', name: 'flex' }, { short: 'EH', name: 'extra hitter' },
  ],
  weightClasses: [],
  entryKinds: ['batter', 'score', 'substitution', 'timeOut', 'periodEnd', 'happening'],
  scores: [
    { what: 'run', words: 'Run', points: 1, perPlayer: true },
    { what: 'hit', words: 'Hit', points: 0, perPlayer: false, isSilent: true },
    { what: 'error', words: 'Error', points: 0, perPlayer: false, isSilent: true },
  ],
  sets: null,
  bouts: [],
  happenings: ['homeRun', 'strikeOut', 'doublePlay'],
  numberRule: 'upToTwoDigits',
  sheet: {
    periods: ['1', '2', '3', '4', '5', '6', '7'],
    overtime: 'extra inning',
    totals: ['R', 'H', 'E'],
    notes: ['Seven innings. With a run rule by state adoption the game may end after five, or four and a half with the home team ahead; a called game counts from then on.'],
    timeOuts: [{ title: 'Defensive conferences', full: 3, short: 0 }],
    teamFoulBoxes: 0,
    scoring: [],
    calls: [
      { when: 'At bat', say: 'Now batting, the (position), number ____, name.' },
      { when: 'Next', say: 'On deck, number ____, name.' },
      { when: 'Pitching change', say: 'Now pitching for team, number ____, name.' },
      { when: 'Substitution', say: 'Now (batting) (running) for number ____, number ____, name.' },
      { when: 'End of inning', say: 'Visitors’ runs first, then home.' },
    ],
  },
  source: 'NFHS Baseball Rules 4-2-1 to 4-2-3; three charged conferences from memory',
};

export const BASEBALL: SportFile = { usualMinutes: 135, rules: [SEVEN_INNINGS] };
