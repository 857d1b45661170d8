import { createRequire } from 'node:module';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { TEXT_COLOUR, contrastOf, teamMarks } from '../../server/platform/typesetting/team-marks.ts';

const { hex } = createRequire(import.meta.url)('wcag-contrast') as { hex: (one: string, other: string) => number };

describe('team marks', () => {
  const colour = fc.integer({ min: 0, max: 0xffffff }).map((value) => `#${value.toString(16).padStart(6, '0')}`);

  // WCAG 2.2, values computed with the npm package wcag-contrast.
  test.each([['#767676', '#ffffff', 4.5422], ['#777777', '#ffffff', 4.4781], ['#000000', '#ffffff', 21], ['#ff0000', '#ffffff', 3.9985], ['#ffff00', '#000000', 19.556]])('the contrast of %s and %s is %f', (one, other, contrast) => {
    expect(contrastOf(one, other)).toBeCloseTo(contrast, 3);
    expect(hex(one, other)).toBeCloseTo(contrast, 3);
  });

  test('text on any tint and any edge on white have a contrast of 4.5 or more, whatever the schools wear', () => {
    fc.assert(fc.property(colour, colour, colour, (home, first, second) => {
      const marks = teamMarks({ first: home, second: home }, { first, second });
      for (const mark of [marks.home, marks.visitors]) {
        expect(hex(mark.tint, TEXT_COLOUR)).toBeGreaterThanOrEqual(4.5);
        expect(hex(mark.edge, '#ffffff')).toBeGreaterThanOrEqual(4.5);
      }
    }));
  });

  test('the two tints are never one, and the patterns differ on a black-and-white printer', () => {
    fc.assert(fc.property(colour, colour, colour, (home, first, second) => {
      const marks = teamMarks({ first: home, second: home }, { first, second });
      expect(marks.home.tint).not.toBe(marks.visitors.tint);
      expect(contrastOf(marks.home.tint, marks.visitors.tint)).toBeGreaterThan(1.1);
      expect([marks.home.pattern, marks.visitors.pattern]).toEqual(['solid', 'hatched']);
    }));
  });

  test.each([
    ['forest green against navy keeps navy', '#1F5C3A', '#16264F', '#D9A521', 'blue'],
    ['green against green takes the gold', '#1F5C3A', '#1F6B3A', '#D9A521', 'gold'],
    ['black stays grey', '#1F5C3A', '#000000', '#E07B00', 'grey'],
  ])('%s', (_, home, first, second, expected) => {
    const { tint } = teamMarks({ first: home, second: home }, { first, second }).visitors;
    const [red, green, blue] = [1, 3, 5].map((at) => Number.parseInt(tint.slice(at, at + 2), 16)) as [number, number, number];
    const looks = Math.max(red, green, blue) - Math.min(red, green, blue) < 6 ? 'grey' : blue > red ? 'blue' : 'gold';
    expect(looks).toBe(expected);
  });
});
