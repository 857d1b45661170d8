import { describe, expect, test } from 'vitest';
import { gameSheet } from '../../server/domain/packet/game-sheet.ts';
import { DEFAULT_PACKET_SETTINGS } from '../../server/domain/packet/night-for-packet.ts';
import { PROFILES } from '../../server/domain/season/profiles.ts';
import { profileFor } from '../../server/domain/season/sport-profile.ts';
import type { Sport } from '../../server/domain/season/sport-profile.ts';
import { game } from './packet-night.ts';

const of = (sport: Sport, season = 2026, settings = {}) => gameSheet(game({ sport }), { ...DEFAULT_PACKET_SETTINGS, ...settings }, profileFor(sport, season));

describe('the table’s sheet of a sport', () => {
  // NFHS Basketball 4-8-1, before and from 2023-24; 5-12.
  test('basketball counts fouls by quarter since 2023-24, two shots from the fifth; before it by half, one and one from the seventh', () => {
    expect(of('basketball')).toMatchObject({ foulPeriods: ['1st quarter', '2nd quarter', '3rd quarter', '4th quarter'], bonusMarks: [{ fromFoul: 5, mark: '2' }], bonusFrom: 5, playerFouls: 5 });
    expect(of('basketball', 2022)).toMatchObject({ foulPeriods: ['1st half', '2nd half'], bonusMarks: [{ fromFoul: 7, mark: '1+1' }, { fromFoul: 10, mark: '2' }], bonusFrom: 7 });
    expect(of('basketball').timeOuts[0]).toEqual({ title: 'Game', full: 3, short: 2 });
  });

  // NFHS Football, from memory.
  test('football has three time-outs a half', () => {
    expect(of('football').timeOuts.map(({ title, full }) => `${title} ${full}`)).toEqual(['1st half 3', '2nd half 3', 'Each overtime 1']);
  });

  // NFHS Volleyball Rule 11; Nevada Administrative Code 386.750.
  test('volleyball plays to 25 and the fifth set to 15, two time-outs a set', () => {
    const { periods, notes, timeOuts, totals } = of('volleyball');
    expect([periods.length, totals, timeOuts.length, timeOuts[4]]).toEqual([5, ['Sets'], 5, { title: 'Set 5', full: 2, short: 0 }]);
    expect(notes.join(' ')).toMatch(/to 25, the fifth to 15/);
  });

  // NFHS release of 25 April 2024: a takedown is three points from 2024-25.
  test('wrestling is kept bout by bout, a takedown at three points since 2024-25', () => {
    const points = (season: number) => of('wrestling', season).scoring.find(({ what }) => what === 'Takedown')?.points;
    expect([points(2023), points(2024)]).toEqual(['2', '3']);
    expect(of('wrestling').bouts).toHaveLength(14);
    expect(of('wrestling').periods).toEqual([]);
  });

  test('baseball and softball have runs, hits and errors after seven innings', () => {
    expect([of('baseball').totals, of('softball').totals, of('softball').periods.length]).toEqual([['R', 'H', 'E'], ['R', 'H', 'E'], 7]);
  });

  test('no sport’s calls of play tell a count, unless the department chose to read fouls', () => {
    for (const profile of PROFILES) {
      for (const { say } of profile.sheet.calls) expect(say).not.toMatch(/\b(points|fouls|team’s ____|time left|remaining)\b/);
    }
    expect(of('basketball', 2026, { foulCountsRead: true }).calls.find(({ when }) => when === 'Foul')?.say).toBe('Foul on team, number ____, name, the player’s ____, the team’s ____ of the quarter.');
    expect(of('basketball', 2022, { foulCountsRead: true }).calls.find(({ when }) => when === 'Foul')?.say).toContain('of the half.');
  });

  test('a sport the house does not know gets two plain periods', () => {
    expect(gameSheet(game({ sport: 'curling' }), DEFAULT_PACKET_SETTINGS, null)).toMatchObject({ periods: ['1st period', '2nd period'], totals: ['Final'], timeOuts: [], bouts: [] });
  });
});
