import type { BreakRule, SportFile } from '../sport-rules.ts';
import { DEAD_BALL, POSTGAME, PREGAME } from './windows.ts';

// The officials warn before the clock runs out; fifteen seconds is common practice, no source.
const WARNING_SECONDS = 15;
const quarterBreak = (afterPeriod: number): BreakRule => ({ afterPeriod, seconds: 60, longestSeconds: 60, halftime: false, warningSeconds: WARNING_SECONDS, mayNotHappen: false });

export const FOOTBALL: SportFile = {
  usualMinutes: 150,
  rules: [
    {
      fromSeason: 2000,
      state: null,
      periods: { name: 'quarter', count: 4, seconds: 720 },
      extraPeriodSeconds: null,
      breaks: [
        quarterBreak(1),
        // The three minutes of warm-up come after halftime, so that nothing is taken off it.
        { afterPeriod: 2, seconds: 900, longestSeconds: 1200, halftime: true, warningSeconds: 0, mayNotHappen: false },
        quarterBreak(3),
      ],
      windows: [
        PREGAME,
        { kind: 'betweenPeriods', owner: 'us', places: 1, timesPerGame: 2, longestReadSeconds: 30 },
        { kind: 'timeOut', owner: 'us', places: 2, timesPerGame: 6, longestReadSeconds: 25 },
        { kind: 'halftime', owner: 'us', places: 3, timesPerGame: 1, longestReadSeconds: 60 },
        POSTGAME,
        DEAD_BALL,
      ],
      timeOuts: [
        { name: 'full', seconds: 60, perTeam: 3, per: 'half', warningSeconds: WARNING_SECONDS },
        { name: 'full', seconds: 60, perTeam: 1, per: 'extraPeriod', warningSeconds: WARNING_SECONDS },
      ],
      teamFouls: null,
      lineUp: 'byUnit',
      startersPerTeam: 22,
      afterEachStarter: null,
      positions: [
        ...([['QB', 'quarterback'], ['RB', 'running back'], ['HB', 'halfback'], ['FB', 'fullback'], ['WR', 'wide receiver'], ['SE', 'split end'], ['TE', 'tight end'], ['OL', 'offensive line'], ['C', 'center'], ['LG', 'left guard'], ['RG', 'right guard'], ['G', 'guard'], ['LT', 'left tackle'], ['RT', 'right tackle'], ['OT', 'tackle'], ['T', 'tackle']] as const)
          .map(([short, name]) => ({ short, name, unit: 'offense' })),
        ...([['DL', 'defensive line'], ['DE', 'defensive end'], ['DT', 'defensive tackle'], ['NT', 'nose tackle'], ['NG', 'nose guard'], ['LB', 'linebacker'], ['ILB', 'inside linebacker'], ['OLB', 'outside linebacker'], ['MLB', 'middle linebacker'], ['CB', 'cornerback'], ['DB', 'defensive back'], ['S', 'safety'], ['SS', 'strong safety'], ['FS', 'free safety']] as const)
          .map(([short, name]) => ({ short, name, unit: 'defense' })),
        ...([['K', 'kicker'], ['P', 'punter'], ['LS', 'long snapper'], ['KR', 'kick returner']] as const).map(([short, name]) => ({ short, name, unit: 'special teams' })),
      ],
      weightClasses: [],
      entryKinds: ['score', 'timeOut', 'periodEnd', 'happening'],
      scores: [
        { what: 'touchdown', words: 'Touchdown', points: 6, perPlayer: true },
        { what: 'tryByKick', words: 'The kick is good', points: 1, perPlayer: true },
        { what: 'tryByRunOrPass', words: 'The try is good', points: 2, perPlayer: true },
        { what: 'fieldGoal', words: 'Field goal', points: 3, perPlayer: true },
        { what: 'safety', words: 'Safety', points: 2, perPlayer: false },
      ],
      sets: null,
      bouts: [],
      happenings: ['firstDown', 'touchdown', 'fieldGoal'],
      numberRule: 'upTo99',
      sheet: {
        periods: ['1st quarter', '2nd quarter', '3rd quarter', '4th quarter'],
        overtime: 'overtime',
        totals: ['Final'],
        notes: ['After halftime comes a warm-up of three minutes. Overtime is by state adoption and belongs to the fourth quarter.'],
        timeOuts: [{ title: '1st half', full: 3, short: 0 }, { title: '2nd half', full: 3, short: 0 }, { title: 'Each overtime', full: 1, short: 0 }],
        teamFoulBoxes: 0,
        scoring: [{ what: 'Touchdown', points: '6' }, { what: 'Try by kick', points: '1' }, { what: 'Try by run or pass', points: '2' }, { what: 'Field goal', points: '3' }, { what: 'Safety', points: '2' }],
        calls: [
          { when: 'Carry', say: 'Number ____, name, the ball carrier. Tackle by number ____, name.' },
          { when: 'Pass', say: 'Number ____, name, to number ____, name.' },
          { when: 'First down', say: 'First down, team.' },
          { when: 'Touchdown', say: 'Touchdown, team. Number ____, name.' },
          { when: 'Try or field goal', say: 'The kick by number ____, name, is (good) (no good).' },
          { when: 'Time-out', say: 'Time-out, team.' },
          { when: 'End of quarter', say: 'Visitors’ score first, then home.' },
        ],
      },
      source: 'NFHS Football Rules 3-1-1, 3-1-6, Table 3-1; quarter break, time-outs, overtime and scoring from memory',
    },
  ],
};
