import { describe, expect, test } from 'vitest';
import { dayOf } from '../../server/domain/day.ts';
import { foulAward, foulSheet } from '../../server/domain/season/fouls.ts';
import { isLegalNumber } from '../../server/domain/season/legal-numbers.ts';
import { PROFILES } from '../../server/domain/season/profiles.ts';
import { ALL_OURS, placesInGame, profileFor, schoolYearOf, windowsOf } from '../../server/domain/season/sport-profile.ts';
import type { PlacesSaid, SportProfile } from '../../server/domain/season/sport-profile.ts';
import { capacityOf } from '../../server/domain/season/window-capacity.ts';

const byHalves = profileFor('basketball', 2022);
const byQuarters = profileFor('basketball', 2023);

describe('the profile of a sport holds from a season on', () => {
  test('basketball counts team fouls by half until 2022-23 and by quarter from 2023-24', () => {
    expect(byHalves.teamFouls?.countedPer).toBe('half');
    expect(byQuarters.teamFouls?.countedPer).toBe('quarter');
    expect(profileFor('basketball', 2026).teamFouls?.countedPer).toBe('quarter');
  });

  test('a state that plays differently has its own profile, other states the country’s', () => {
    const own = { ...byQuarters, state: 'CO', fromSeason: 2010, periods: { name: 'half', count: 2, seconds: 1080 } };
    expect(profileFor('basketball', 2026, 'CO', [...PROFILES, own]).periods.name).toBe('half');
    expect(profileFor('basketball', 2026, 'UT', [...PROFILES, own]).periods.name).toBe('quarter');
    expect(() => profileFor('basketball', 1999)).toThrow(RangeError);
  });

  // NFHS Basketball Rules 5-5-1, 5-7, 5-12.
  test('basketball has four quarters of eight minutes, ten at the half, five time-outs a team', () => {
    expect(byQuarters.periods).toEqual({ name: 'quarter', count: 4, seconds: 480 });
    expect(byQuarters.breaks.map((pause) => [pause.seconds, pause.longestSeconds])).toEqual([[60, 60], [600, 900], [60, 60]]);
    expect(byQuarters.extraPeriodSeconds).toBe(240);
    const regulation = byQuarters.timeOuts.filter((timeOut) => timeOut.per === 'game');
    expect(regulation.reduce((sum, timeOut) => sum + timeOut.perTeam * timeOut.seconds, 0)).toBe(240);
  });

  // Football NFHS 3-1-1; volleyball Rule 11; soccer 7-1; wrestling two-minute periods; baseball 4-2-1.
  test.each([
    ['football', 'quarter', 4, 720],
    ['volleyball', 'set', 5, null],
    ['soccer', 'half', 2, 2400],
    ['wrestling', 'period', 3, 120],
    ['baseball', 'inning', 7, null],
    ['softball', 'inning', 7, null],
  ] as const)('%s is played in %s of which there are %i', (sport, name, count, seconds) => {
    expect(profileFor(sport, 2026).periods).toEqual({ name, count, seconds });
  });

  // Nevada Administrative Code 386.750: 25 points, 15 in the deciding set, two time-outs a set.
  test('Nevada’s own regulation of volleyball is a row of its own, other states have the country’s', () => {
    expect(profileFor('volleyball', 2026, 'NV')).toMatchObject({ state: 'NV', source: expect.stringContaining('386.750') });
    expect(profileFor('volleyball', 2026, 'CO').state).toBeNull();
    expect(profileFor('volleyball', 2026, 'NV').timeOuts).toEqual([{ name: 'full', seconds: 60, perTeam: 2, per: 'set', warningSeconds: 15 }]);
  });

  // Invented values: what a state may change is any field (NFHS Basketball 5-11-1 Note: fewer time-outs; others are the state's own).
  test('an invented state changes time-outs, breaks, numbers and the order of line-ups, and nothing else', () => {
    const own: SportProfile = {
      ...byQuarters, state: 'ZZ', numberRule: 'upTo99', lineUp: 'alternating',
      timeOuts: [{ name: 'full', seconds: 60, perTeam: 4, per: 'game', warningSeconds: 15 }],
      breaks: byQuarters.breaks.map((pause) => (pause.halftime ? { ...pause, seconds: 720 } : pause)),
    };
    const there = profileFor('basketball', 2026, 'ZZ', [...PROFILES, own]);
    expect([isLegalNumber(there.numberRule, '66'), isLegalNumber(byQuarters.numberRule, '66')]).toEqual([true, false]);
    expect([capacityOf(there, 'halftime').capacitySeconds, capacityOf(there, 'timeOut1').shortCapacitySeconds]).toEqual([540, null]);
    expect([there.lineUp, there.teamFouls]).toEqual(['alternating', byQuarters.teamFouls]);
    expect(profileFor('basketball', 2022, 'ZZ', [...PROFILES, own]).state).toBeNull();
  });

  test('every sport is complete: line-up, sheet, calls of play, a source, and a window before and after the game', () => {
    expect([...new Set(PROFILES.map((profile) => profile.sport))]).toEqual(['basketball', 'football', 'volleyball', 'soccer', 'wrestling', 'baseball', 'softball']);
    for (const { sport, sheet, source, windows, breaks, periods, startersPerTeam, weightClasses } of PROFILES) {
      expect([sport, sheet.totals.length > 0, sheet.calls.length > 2, source.length > 20, startersPerTeam > 0]).toEqual([sport, true, true, true, true]);
      expect(windows.map((window) => window.kind)).toEqual(expect.arrayContaining(['pregame', 'postgame']));
      expect(sheet.periods.length === periods.count || weightClasses.length === startersPerTeam).toBe(true);
      expect(breaks.length === periods.count - 1 || breaks.length === 0).toBe(true);
      for (const pause of breaks) expect(pause.warningSeconds).toBeLessThan(pause.seconds);
    }
  });

  // NFHS 2024-04-25: three points for a takedown; 2023-24 and before two (from memory).
  test('wrestling changes its scoring with 2024-25', () => {
    expect([profileFor('wrestling', 2023).fromSeason, profileFor('wrestling', 2024).fromSeason]).toEqual([2000, 2024]);
  });

  test('the school year of a day begins in July', () => {
    expect([schoolYearOf(dayOf('2026-06-30')), schoolYearOf(dayOf('2026-07-01')), schoolYearOf(dayOf('2027-02-01'))]).toEqual([2025, 2026, 2026]);
  });
});

describe('windows have places only where we own them', () => {
  test('a gym holds three reads before the game, one between periods, two in a time-out, three at the half, one after', () => {
    expect(windowsOf(byQuarters).map((window) => `${window.key} ${window.places}`)).toEqual([
      'pregame 3', 'betweenPeriods1 1', 'betweenPeriods2 1', 'timeOut1 2', 'timeOut2 2', 'timeOut3 2', 'timeOut4 2', 'halftime 3', 'postgame 1',
    ]);
    expect(placesInGame(byQuarters)).toBe(17);
  });

  test('a state-series game has no place for our sponsors', () => {
    expect(placesInGame(byQuarters, { windowsOwnedBy: 'association', windowOwners: {} })).toBe(0);
  });

  test('one window may be the conference’s and the rest ours', () => {
    expect(placesInGame(byQuarters, { ...ALL_OURS, windowOwners: { halftime: 'conference' } })).toBe(14);
  });

  test.each([
    ['nothing', [], [3, {}]],
    ['five of the window', [{ windowKind: 'halftime', placeGroup: null, places: 5 }], [5, {}]],
    ['two of a group', [{ windowKind: 'halftime', placeGroup: 'long reads', places: 2 }], [3, { 'long reads': 2 }]],
    ['more of a group than the window holds', [{ windowKind: 'halftime', placeGroup: 'long reads', places: 4 }], [3, { 'long reads': 3 }]],
    ['none of the window', [{ windowKind: 'halftime', placeGroup: null, places: 0 }, { windowKind: 'halftime', placeGroup: 'long reads', places: 2 }], [0, { 'long reads': 0 }]],
    ['something of another window', [{ windowKind: 'timeOut', placeGroup: null, places: 1 }], [3, {}]],
  ] as [string, PlacesSaid[], [number, Record<string, number>]][])('halftime where the department says %s', (_, said, [places, groupPlaces]) => {
    expect(windowsOf(byQuarters, ALL_OURS, false, said).find((window) => window.kind === 'halftime')).toMatchObject({ places, groupPlaces });
    expect(windowsOf(byQuarters, { ...ALL_OURS, windowOwners: { halftime: 'conference' } }, false, said).find((window) => window.kind === 'halftime')?.places).toBe(0);
  });

  test('the dead-ball mention is there only where the department allows it, four seconds or less', () => {
    const deadBall = windowsOf(byQuarters, ALL_OURS, true).find((window) => window.kind === 'deadBall');
    expect(deadBall?.longestReadSeconds).toBe(4);
    expect(windowsOf(byQuarters).some((window) => window.kind === 'deadBall')).toBe(false);
  });

  test('no sport has a window in which more reads stand than places', () => {
    for (const profile of PROFILES) {
      expect(new Set(windowsOf(profile).map((window) => window.key)).size).toBe(windowsOf(profile).length);
      expect(placesInGame(profile)).toBeGreaterThan(0);
    }
  });
});

describe('what a team foul earns (NFHS Basketball Rule 4-8-1)', () => {
  test.each([
    [1, 'none', 'none'],
    [4, 'none', 'none'],
    [5, 'none', 'two'],
    [6, 'none', 'two'],
    [7, 'oneAndOne', 'two'],
    [9, 'oneAndOne', 'two'],
    [10, 'two', 'two'],
  ] as const)('foul %i earns %s by halves and %s by quarters', (foul, halves, quarters) => {
    expect(foulAward(byHalves.teamFouls, foul)).toBe(halves);
    expect(foulAward(byQuarters.teamFouls, foul)).toBe(quarters);
  });

  const periods = [...Array(4).fill(1), ...Array(4).fill(2), ...Array(6).fill(3), ...Array(3).fill(4)] as number[];

  test('four, four, six and three fouls earn two shots twice by quarters', () => {
    const earned = foulSheet(byQuarters.teamFouls!, periods).map((foul) => foul.award);
    expect(earned.flatMap((award, place) => (award === 'none' ? [] : [`${periods[place]}:${award}`]))).toEqual(['3:two', '3:two']);
  });

  test('the same fouls earn five one-and-ones by halves', () => {
    const earned = foulSheet(byHalves.teamFouls!, periods).map((foul) => foul.award);
    expect(earned.flatMap((award, place) => (award === 'none' ? [] : [`${periods[place]}:${award}`]))).toEqual([
      '2:oneAndOne', '2:oneAndOne', '4:oneAndOne', '4:oneAndOne', '4:oneAndOne',
    ]);
  });

  // NFHS Rule 5-7-3: extra periods extend the fourth quarter; that fouls carry over is from memory.
  test('after four fouls in the fourth quarter the first foul of overtime is the fifth', () => {
    expect(foulSheet(byQuarters.teamFouls!, [4, 4, 4, 4, 5]).at(-1)).toEqual({ teamFoulNumber: 5, award: 'two' });
    expect(foulSheet(byQuarters.teamFouls!, [3, 3, 3, 3, 4]).at(-1)).toEqual({ teamFoulNumber: 1, award: 'none' });
    // By half, in a state that plays two: the third period is overtime and goes on with the second half.
    expect(foulSheet(byHalves.teamFouls!, [1, 2, 2, 3], 2).map((foul) => foul.teamFoulNumber)).toEqual([1, 1, 2, 3]);
  });

  test('a sport without team fouls earns nothing, and a foul has a number from one', () => {
    expect(foulAward(profileFor('soccer', 2026).teamFouls, 12)).toBe('none');
    expect(() => foulAward(byQuarters.teamFouls, 0)).toThrow(RangeError);
  });
});
