import type { SportFile } from '../sport-rules.ts';
import { DEAD_BALL, POSTGAME, PREGAME } from './windows.ts';

export const SOCCER: SportFile = {
  usualMinutes: 105,
  rules: [
    {
      fromSeason: 2000,
      state: null,
      periods: { name: 'half', count: 2, seconds: 2400 },
      extraPeriodSeconds: null,
      // That the teams are called back two minutes before is common practice, no source.
      breaks: [{ afterPeriod: 1, seconds: 600, longestSeconds: 600, halftime: true, warningSeconds: 120, mayNotHappen: false }],
      windows: [PREGAME, { kind: 'halftime', owner: 'us', places: 4, timesPerGame: 1, longestReadSeconds: 60 }, POSTGAME, DEAD_BALL],
      timeOuts: [],
      teamFouls: null,
      lineUp: 'visitorsThenHome',
      startersPerTeam: 11,
      afterEachStarter: null,
      positions: [{ short: 'GK', name: 'goalkeeper' }, { short: 'G', name: 'goalkeeper' }, { short: 'D', name: 'defender' }, { short: 'DF', name: 'defender' }, { short: 'M', name: 'midfielder' }, { short: 'MF', name: 'midfielder' }, { short: 'F', name: 'forward' }, { short: 'FW', name: 'forward' }],
      weightClasses: [],
      entryKinds: ['score', 'substitution', 'periodEnd', 'happening'],
      scores: [{ what: 'goal', words: 'Goal', points: 1, perPlayer: true }],
      sets: null,
      bouts: [],
      happenings: ['goal', 'save'],
      numberRule: 'upTo99',
      sheet: {
        periods: ['1st half', '2nd half'],
        overtime: 'overtime',
        totals: ['Final'],
        notes: ['Two halves of forty minutes, or four quarters of twenty. Extra time and kicks from the mark are by state adoption.'],
        timeOuts: [],
        teamFoulBoxes: 0,
        scoring: [],
        calls: [
          { when: 'Goal', say: 'Goal, team. Number ____, name. Assisted by number ____, name.' },
          { when: 'Substitution', say: 'For team, number ____, name, comes on for number ____, name.' },
          { when: 'Card', say: 'A (yellow) (red) card, team, number ____.' },
          { when: 'End of half', say: 'Visitors’ score first, then home.' },
        ],
      },
      source: 'NFHS Soccer Rules 7-1, 7-2, as a study set gives them; no time-outs from memory',
    },
  ],
};
