// @ts-expect-error: the package comes without types
import contrast from 'wcag-contrast';
import { describe, expect, test } from 'vitest';
import { colour, initialsOf, tintOfHue, tintsOf } from '../../admin-ui/plan-board/tint.ts';
import { DARK, LIGHT } from '../../admin-ui/theme/palette.ts';

/** Success criterion 1.4.3 of WCAG 2.2 (W3C Recommendation, 5 October 2023): text needs 4.5 : 1. */
describe.each([['light', LIGHT], ['dark', DARK]] as const)('on the %s board', (mode, tone) => {
  test('a name reaches 4.5 : 1 on every tint, and the mark on every edge', () => {
    for (let hue = 0; hue < 360; hue += 1) {
      const { ground, edge } = tintOfHue(hue, mode);
      expect(contrast.hex(tone.ink, ground)).toBeGreaterThanOrEqual(4.5);
      expect(contrast.hex(tone.sheet, edge)).toBeGreaterThanOrEqual(4.5);
    }
  });
});

test.each([[0, 1, 0.5, '#ff0000'], [120, 1, 0.25, '#008000'], [240, 1, 0.5, '#0000ff'], [38.8, 1, 0.5, '#ffa500'], [0, 0, 1, '#ffffff']])('hsl(%d %d %d) is %s', (hue, saturation, lightness, hex) => {
  // Source: CSS Color Module Level 4 (W3C), named colors red, green, blue, orange, white and their hsl().
  expect(colour(hue, saturation, lightness)).toBe(hex);
});

test('eight sponsors have eight tints, whoever else is on the board the day after', () => {
  const eight = ['Juniper & Pike', 'Copperline', 'Snowmelt', 'Halvorsen', 'Pinyon', 'Mirabel', 'Okafor', 'Blue Lantern'];
  const tints = tintsOf(eight, 'light');
  expect(new Set([...tints.values()].map((tint) => tint.ground)).size).toBe(8);
  expect(tintsOf(eight.toReversed(), 'light')).toEqual(tints);
  expect(tintsOf(Array.from({ length: 60 }, (_, at) => `sponsor ${at}`), 'dark').size).toBe(60);
});

test.each([['Snowmelt Creamery', 'SC'], ['Juniper & Pike Hardware', 'JP'], ["Mirabel's Kitchen", 'MK'], ['Copperline', 'CO'], ['Łukasz', 'ŁU'], ['', '?']])('the mark of "%s" is %s', (name, mark) => {
  expect(initialsOf(name)).toBe(mark);
});
