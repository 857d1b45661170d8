import type { SportProfile, WindowRule } from './sport-profile.ts';

// Places per window are common practice, no source: a department changes them to what its crowd bears.
const GYM_WINDOWS: readonly WindowRule[] = [
  { kind: 'pregame', owner: 'us', places: 3, timesPerGame: 1, longestReadSeconds: 30 },
  { kind: 'betweenPeriods', owner: 'us', places: 1, timesPerGame: 2, longestReadSeconds: 30 },
  { kind: 'timeOut', owner: 'us', places: 2, timesPerGame: 4, longestReadSeconds: 25 },
  { kind: 'halftime', owner: 'us', places: 3, timesPerGame: 1, longestReadSeconds: 60 },
  { kind: 'postgame', owner: 'us', places: 1, timesPerGame: 1, longestReadSeconds: 30 },
  { kind: 'deadBall', owner: 'us', places: 1, timesPerGame: 0, longestReadSeconds: 4 },
];

export const BASKETBALL_BY_HALVES: SportProfile = {
  sport: 'basketball',
  fromSeason: 2000,
  state: null,
  periods: { name: 'quarter', count: 4, seconds: 480 },
  extraPeriodSeconds: 240,
  breaks: [
    { afterPeriod: 1, seconds: 60, longestSeconds: 60, halftime: false },
    { afterPeriod: 2, seconds: 600, longestSeconds: 900, halftime: true },
    { afterPeriod: 3, seconds: 60, longestSeconds: 60, halftime: false },
  ],
  windows: GYM_WINDOWS,
  timeOuts: [
    { name: 'full', seconds: 60, perTeam: 3, per: 'game' },
    { name: 'thirty', seconds: 30, perTeam: 2, per: 'game' },
    { name: 'full', seconds: 60, perTeam: 1, per: 'extraPeriod' },
  ],
  teamFouls: {
    countedPer: 'half',
    steps: [
      { fromFoul: 7, award: 'oneAndOne' },
      { fromFoul: 10, award: 'two' },
    ],
    playerLimit: 5,
  },
  lineUp: 'alternating',
  startersPerTeam: 5,
  entryKinds: ['basket', 'foul', 'substitution', 'timeOut', 'periodEnd', 'happening'],
  happenings: ['bankShot', 'threePointer', 'dunk'],
  numberRule: 'fingers',
  source: 'NFHS Basketball Rules 5-5-1, 5-7, 5-12, 4-8-1 (before 2023-24)',
};

export const BASKETBALL_BY_QUARTERS: SportProfile = {
  ...BASKETBALL_BY_HALVES,
  fromSeason: 2023,
  teamFouls: { countedPer: 'quarter', steps: [{ fromFoul: 5, award: 'two' }], playerLimit: 5 },
  source: 'NFHS release of 15 May 2023, Rule 4-8-1; NFHS Basketball Rules 5-5-1, 5-7, 5-12',
};

export const VOLLEYBALL: SportProfile = {
  sport: 'volleyball',
  fromSeason: 2000,
  state: null,
  periods: { name: 'set', count: 5, seconds: null },
  extraPeriodSeconds: null,
  breaks: [1, 2, 3, 4].map((afterPeriod) => ({ afterPeriod, seconds: 180, longestSeconds: 180, halftime: false })),
  windows: [
    { kind: 'pregame', owner: 'us', places: 3, timesPerGame: 1, longestReadSeconds: 30 },
    { kind: 'betweenPeriods', owner: 'us', places: 2, timesPerGame: 2, longestReadSeconds: 45 },
    { kind: 'timeOut', owner: 'us', places: 1, timesPerGame: 4, longestReadSeconds: 25 },
    { kind: 'postgame', owner: 'us', places: 1, timesPerGame: 1, longestReadSeconds: 30 },
    { kind: 'deadBall', owner: 'us', places: 1, timesPerGame: 0, longestReadSeconds: 4 },
  ],
  timeOuts: [{ name: 'full', seconds: 60, perTeam: 2, per: 'set' }],
  teamFouls: null,
  lineUp: 'visitorsThenHome',
  startersPerTeam: 6,
  entryKinds: ['substitution', 'timeOut', 'periodEnd', 'happening'],
  happenings: ['ace', 'block'],
  numberRule: 'upTo99',
  source: 'NFHS Volleyball Rule 11; NAC 386.750 for points and time-outs',
};

export const WRESTLING: SportProfile = {
  sport: 'wrestling',
  fromSeason: 2000,
  state: null,
  periods: { name: 'period', count: 3, seconds: 120 },
  extraPeriodSeconds: 60,
  breaks: [],
  windows: [
    { kind: 'pregame', owner: 'us', places: 3, timesPerGame: 1, longestReadSeconds: 30 },
    { kind: 'betweenPeriods', owner: 'us', places: 1, timesPerGame: 6, longestReadSeconds: 20 },
    { kind: 'postgame', owner: 'us', places: 1, timesPerGame: 1, longestReadSeconds: 30 },
  ],
  timeOuts: [],
  teamFouls: null,
  lineUp: 'byWeightClass',
  startersPerTeam: 14,
  entryKinds: ['periodEnd', 'happening'],
  happenings: ['fall'],
  numberRule: 'none',
  source: 'NFHS Wrestling, three periods of two minutes; sudden victory from memory',
};
