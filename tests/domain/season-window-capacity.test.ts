import { describe, expect, test } from 'vitest';
import { PROFILES } from '../../server/domain/season/profiles.ts';
import { profileFor, windowsOf } from '../../server/domain/season/sport-profile.ts';
import type { Sport } from '../../server/domain/season/sport-profile.ts';
import { capacityOf } from '../../server/domain/season/window-capacity.ts';
import type { CapacityOfNight } from '../../server/domain/season/window-capacity.ts';

const usual: CapacityOfNight = { halftimeSeconds: null, timeOutsReliedOn: null };
const of = (sport: Sport, windowKey: string, night = usual) => capacityOf(profileFor(sport, 2026), windowKey, night);

describe('how long one may speak in a window', () => {
  test.each([
    // NFHS Basketball 5-12 and 3-3-1a: a 60-second time-out less the horn; a thirty leaves fifteen.
    ['basketball', 'timeOut1', 45],
    // NFHS Basketball 5-5-1: one minute between quarters, less the horn.
    ['basketball', 'betweenPeriods1', 45],
    ['basketball', 'betweenPeriods2', 45],
    // NFHS Basketball 5-5-1: ten minutes; IAABO Board 36: notice three minutes before the second half.
    ['basketball', 'halftime', 420],
    ['basketball', 'pregame', null],
    ['basketball', 'postgame', null],
    ['basketball', 'deadBall', 4],
    // NFHS Football Table 3-1: fifteen minutes, the warm-up comes after. Quarter break and time-outs from memory, warning common practice.
    ['football', 'halftime', 900],
    ['football', 'betweenPeriods2', 45],
    ['football', 'timeOut6', 45],
    // NFHS Volleyball Rule 11: at most three minutes between sets, warning at two and a half; 60 s, warning at 15.
    ['volleyball', 'betweenPeriods1', 150],
    ['volleyball', 'timeOut4', 45],
    // NFHS Soccer 7-2: ten minutes; called back two minutes before is common practice.
    ['soccer', 'halftime', 480],
    // No clock in the rules: common practice, no source.
    ['wrestling', 'betweenPeriods6', 30],
    ['baseball', 'betweenPeriods4', 60],
    ['softball', 'betweenPeriods1', 60],
  ] as const)('%s, %s: %s seconds', (sport, windowKey, seconds) => {
    expect(of(sport, windowKey).capacitySeconds).toBe(seconds);
  });

  test('a thirty-second time-out leaves fifteen, about 37 words at 150 a minute', () => {
    expect(of('basketball', 'timeOut1').shortCapacitySeconds).toBe(15);
    expect(Math.floor((15 * 150) / 60)).toBe(37);
    expect(of('football', 'timeOut1').shortCapacitySeconds).toBeNull();
  });

  test('a halftime made longer for tonight has the notice taken off it as well', () => {
    expect(of('basketball', 'halftime', { ...usual, halftimeSeconds: 900 }).capacitySeconds).toBe(720);
    expect(of('basketball', 'halftime', { ...usual, halftimeSeconds: 120 }).capacitySeconds).toBe(0);
    expect(of('basketball', 'timeOut1', { ...usual, halftimeSeconds: 900 }).capacitySeconds).toBe(45);
  });

  test('a sport the house does not know limits nothing and promises no time-out', () => {
    expect(capacityOf(null, 'halftime')).toMatchObject({ capacitySeconds: null, isReliedOn: true });
    expect(capacityOf(null, 'timeOut1')).toMatchObject({ capacitySeconds: null, mayNotHappen: true, isReliedOn: false });
  });
});

describe('windows that may not happen', () => {
  test.each([
    ['basketball', 'halftime', false],
    ['basketball', 'timeOut1', true],
    // The third set is always played in the best of five, the fourth may not be.
    ['volleyball', 'betweenPeriods2', false],
    ['volleyball', 'betweenPeriods3', true],
    ['volleyball', 'betweenPeriods4', true],
    // NFHS Baseball 4-2: a game of a run rule ends after four and a half or five innings.
    ['baseball', 'betweenPeriods4', false],
    ['baseball', 'betweenPeriods5', true],
    ['baseball', 'betweenPeriods7', true],
    ['soccer', 'betweenPeriods1', false],
    ['wrestling', 'betweenPeriods1', false],
  ] as const)('%s, %s: %s', (sport, windowKey, may) => {
    expect(of(sport, windowKey).mayNotHappen).toBe(may);
  });

  test('time-outs are relied on as far as the department dares, else as many as a usual game has', () => {
    const reliedOn = (timeOutsReliedOn: number | null) => [1, 2, 3, 4, 5].map((number) => of('basketball', `timeOut${number}`, { ...usual, timeOutsReliedOn }).isReliedOn);
    expect(reliedOn(null)).toEqual([true, true, true, true, false]);
    expect(reliedOn(2)).toEqual([true, true, false, false, false]);
    expect(reliedOn(0)).toEqual([false, false, false, false, false]);
  });

  test('of the breaks, a usual game counts only those that are sure to come', () => {
    for (const profile of PROFILES) {
      for (const { key, kind, longestReadSeconds } of windowsOf(profile)) {
        const { capacitySeconds, isReliedOn } = capacityOf(profile, key);
        expect(isReliedOn).toBe(true);
        if (kind !== 'deadBall' && capacitySeconds !== null) expect(longestReadSeconds).toBeLessThanOrEqual(capacitySeconds);
      }
    }
  });
});
