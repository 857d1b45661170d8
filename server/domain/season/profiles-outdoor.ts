import type { SportProfile, WindowRule } from './sport-profile.ts';

// Places per window are common practice, no source: a department changes them to what its crowd bears.
const pregame: WindowRule = { kind: 'pregame', owner: 'us', places: 3, timesPerGame: 1, longestReadSeconds: 30 };
const postgame: WindowRule = { kind: 'postgame', owner: 'us', places: 1, timesPerGame: 1, longestReadSeconds: 30 };
const deadBall: WindowRule = { kind: 'deadBall', owner: 'us', places: 1, timesPerGame: 0, longestReadSeconds: 4 };

export const FOOTBALL: SportProfile = {
  sport: 'football',
  fromSeason: 2000,
  state: null,
  periods: { name: 'quarter', count: 4, seconds: 720 },
  extraPeriodSeconds: null,
  breaks: [
    { afterPeriod: 1, seconds: 60, longestSeconds: 60, halftime: false },
    { afterPeriod: 2, seconds: 900, longestSeconds: 1200, halftime: true },
    { afterPeriod: 3, seconds: 60, longestSeconds: 60, halftime: false },
  ],
  windows: [
    pregame,
    { kind: 'betweenPeriods', owner: 'us', places: 1, timesPerGame: 2, longestReadSeconds: 30 },
    { kind: 'timeOut', owner: 'us', places: 2, timesPerGame: 6, longestReadSeconds: 25 },
    { kind: 'halftime', owner: 'us', places: 3, timesPerGame: 1, longestReadSeconds: 60 },
    postgame,
    deadBall,
  ],
  timeOuts: [
    { name: 'full', seconds: 60, perTeam: 3, per: 'half' },
    { name: 'full', seconds: 60, perTeam: 1, per: 'extraPeriod' },
  ],
  teamFouls: null,
  lineUp: 'byUnit',
  startersPerTeam: 22,
  entryKinds: ['timeOut', 'periodEnd', 'happening'],
  happenings: ['firstDown', 'touchdown', 'fieldGoal'],
  numberRule: 'upTo99',
  source: 'NFHS Football Rules 3-1-1, 3-1-6, Table 3-1; quarter break, time-outs and overtime from memory',
};

export const SOCCER: SportProfile = {
  sport: 'soccer',
  fromSeason: 2000,
  state: null,
  periods: { name: 'half', count: 2, seconds: 2400 },
  extraPeriodSeconds: null,
  breaks: [{ afterPeriod: 1, seconds: 600, longestSeconds: 600, halftime: true }],
  windows: [
    pregame,
    { kind: 'halftime', owner: 'us', places: 4, timesPerGame: 1, longestReadSeconds: 60 },
    postgame,
    deadBall,
  ],
  timeOuts: [],
  teamFouls: null,
  lineUp: 'visitorsThenHome',
  startersPerTeam: 11,
  entryKinds: ['substitution', 'periodEnd', 'happening'],
  happenings: ['goal', 'save'],
  numberRule: 'upTo99',
  source: 'NFHS Soccer Rules 7-1, 7-2; no time-outs from memory',
};

export const BASEBALL: SportProfile = {
  sport: 'baseball',
  fromSeason: 2000,
  state: null,
  periods: { name: 'inning', count: 7, seconds: null },
  extraPeriodSeconds: null,
  // Half-inning changes have no clock in the rules; 90 seconds is common practice, no source.
  breaks: [1, 2, 3, 4, 5, 6].map((afterPeriod) => ({ afterPeriod, seconds: 90, longestSeconds: 120, halftime: false })),
  windows: [
    pregame,
    { kind: 'betweenPeriods', owner: 'us', places: 1, timesPerGame: 6, longestReadSeconds: 25 },
    postgame,
    deadBall,
  ],
  timeOuts: [{ name: 'conference', seconds: 60, perTeam: 3, per: 'game' }],
  teamFouls: null,
  lineUp: 'battingOrder',
  startersPerTeam: 9,
  entryKinds: ['substitution', 'periodEnd', 'happening'],
  happenings: ['homeRun', 'strikeOut', 'doublePlay'],
  numberRule: 'upToTwoDigits',
  source: 'NFHS Baseball Rules 4-2-1 to 4-2-3; three charged conferences from memory',
};

export const SOFTBALL: SportProfile = {
  ...BASEBALL,
  sport: 'softball',
  numberRule: 'upTo99',
  source: 'NFHS Softball, seven innings; three charged conferences from memory',
};
