import { createRequire } from 'node:module';
import { differenceCiede2000, parse } from 'culori';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { SIGHTS, TEXT_COLOUR, TINTS_DIFFER_BY, contrastOf, leastDifference, teamMarks } from '../../server/platform/typesetting/team-marks.ts';

const { hex } = createRequire(import.meta.url)('wcag-contrast') as { hex: (one: string, other: string) => number };

/**
 * G. Sharma, W. Wu, E. N. Dalal, "The CIEDE2000 color-difference formula: implementation notes,
 * supplementary test data, and mathematical observations", Color Research & Application 30(1), 2005,
 * table 1: L a b, L a b, difference. Typed from the data that the tests of the colour library culori carry.
 */
const SHARMA_PAIRS: readonly (readonly [number, number, number, number, number, number, number])[] = [
  [50, 2.6772, -79.7751, 50, 0, -82.7485, 2.0425], [50, 3.1571, -77.2803, 50, 0, -82.7485, 2.8615], [50, 2.8361, -74.02, 50, 0, -82.7485, 3.4412],
  [50, -1.3802, -84.2814, 50, 0, -82.7485, 1], [50, -1.1848, -84.8006, 50, 0, -82.7485, 1], [50, -0.9009, -85.5211, 50, 0, -82.7485, 1],
  [50, 0, 0, 50, -1, 2, 2.3669], [50, -1, 2, 50, 0, 0, 2.3669], [50, 2.49, -0.001, 50, -2.49, 0.0009, 7.1792],
  [50, 2.49, -0.001, 50, -2.49, 0.001, 7.1792], [50, 2.49, -0.001, 50, -2.49, 0.0011, 7.2195], [50, 2.49, -0.001, 50, -2.49, 0.0012, 7.2195],
  [50, -0.001, 2.49, 50, 0.0009, -2.49, 4.8045], [50, -0.001, 2.49, 50, 0.001, -2.49, 4.8045], [50, -0.001, 2.49, 50, 0.0011, -2.49, 4.7461],
  [50, 2.5, 0, 50, 0, -2.5, 4.3065], [50, 2.5, 0, 73, 25, -18, 27.1492], [50, 2.5, 0, 61, -5, 29, 22.8977],
  [50, 2.5, 0, 56, -27, -3, 31.903], [50, 2.5, 0, 58, 24, 15, 19.4535], [50, 2.5, 0, 50, 3.1736, 0.5854, 1],
  [50, 2.5, 0, 50, 3.2972, 0, 1], [50, 2.5, 0, 50, 1.8634, 0.5757, 1], [50, 2.5, 0, 50, 3.2592, 0.335, 1],
  [60.2574, -34.0099, 36.2677, 60.4626, -34.1751, 39.4387, 1.2644], [63.0109, -31.0961, -5.8663, 62.8187, -29.7946, -4.0864, 1.263],
  [61.2901, 3.7196, -5.3901, 61.4292, 2.248, -4.962, 1.8731], [35.0831, -44.1164, 3.7933, 35.0232, -40.0716, 1.5901, 1.8645],
  [22.7233, 20.0904, -46.694, 23.0331, 14.973, -42.5619, 2.0373], [36.4612, 47.858, 18.3852, 36.2715, 50.5065, 21.2231, 1.4146],
  [90.8027, -2.0831, 1.441, 91.1528, -1.6435, 0.0447, 1.4441], [90.9257, -0.5406, -0.9208, 88.6381, -0.8985, -0.7239, 1.5381],
  [6.7747, -0.2908, -2.4247, 5.8714, -0.0985, -2.2286, 0.6377], [2.0776, 0.0795, -1.135, 0.9033, -0.0636, -0.5514, 0.9082],
];

test('the difference of colours agrees with all 34 published pairs to four decimals, both ways round', () => {
  expect(SHARMA_PAIRS).toHaveLength(34);
  const difference = differenceCiede2000();
  for (const [l, a, b, otherL, otherA, otherB, published] of SHARMA_PAIRS) {
    const [one, other] = [{ mode: 'lab65', l, a, b }, { mode: 'lab65', l: otherL, a: otherA, b: otherB }] as const;
    expect(difference(one, other).toFixed(4)).toBe(published.toFixed(4));
    expect(difference(other, one).toFixed(4)).toBe(published.toFixed(4));
  }
});

const KESTRELS = { first: '#1F5C3A', second: '#B8632A' };
const OPPONENTS = [
  ['Herons, navy and gold', '#16264F', '#D9A521'],
  ['Miners, black and orange', '#111111', '#E07B00'],
  ['Otters, purple and white', '#4B2A7B', '#FFFFFF'],
  ['Larks, sky blue and white', '#7CC4EA', '#FFFFFF'],
  ['Pronghorns, maroon and tan', '#6B1F2A', '#CDB38B'],
] as const;

describe.each(OPPONENTS)('Kestrels against %s', (_, first, second) => {
  for (const [marks, where] of [[teamMarks(KESTRELS, { first, second }), 'at home'], [teamMarks({ first, second }, KESTRELS), 'away']] as const) {
    test(`${where} the tints differ by ${TINTS_DIFFER_BY} for every reader and in grey, and carry black letters`, () => {
      for (const [sight, seen] of Object.entries(SIGHTS)) {
        const differs = differenceCiede2000()(seen(parse(marks.home.tint)!), seen(parse(marks.visitors.tint)!));
        expect([sight, differs >= TINTS_DIFFER_BY]).toEqual([sight, true]);
      }
      for (const { tint, edge } of [marks.home, marks.visitors]) {
        expect(hex(tint, TEXT_COLOUR)).toBeGreaterThanOrEqual(4.5);
        expect(hex(edge, '#ffffff')).toBeGreaterThanOrEqual(4.5);
      }
      expect(marks.home.pattern).not.toBe(marks.visitors.pattern);
    });
  }
});

describe('team marks', () => {
  const colour = fc.integer({ min: 0, max: 0xffffff }).map((value) => `#${value.toString(16).padStart(6, '0')}`);

  // WCAG 2.2, values computed with the npm package wcag-contrast.
  test.each([['#767676', '#ffffff', 4.5422], ['#777777', '#ffffff', 4.4781], ['#000000', '#ffffff', 21], ['#ff0000', '#ffffff', 3.9985], ['#ffff00', '#000000', 19.556]])('the contrast of %s and %s is %f', (one, other, contrast) => {
    expect(contrastOf(one, other)).toBeCloseTo(contrast, 3);
    expect(hex(one, other)).toBeCloseTo(contrast, 3);
  });

  test('whatever the schools wear, tints differ for every reader, letters keep a contrast of 4.5 and the patterns differ', () => {
    fc.assert(fc.property(colour, colour, colour, (home, first, second) => {
      const marks = teamMarks({ first: home, second: home }, { first, second });
      for (const mark of [marks.home, marks.visitors]) {
        expect(hex(mark.tint, TEXT_COLOUR)).toBeGreaterThanOrEqual(4.5);
        expect(hex(mark.edge, '#ffffff')).toBeGreaterThanOrEqual(4.5);
      }
      expect(leastDifference(marks.home.tint, marks.visitors.tint)).toBeGreaterThanOrEqual(TINTS_DIFFER_BY);
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

  test('what is no colour is refused', () => {
    expect(() => teamMarks({ first: 'green', second: '#ffffff' }, KESTRELS)).toThrow('green is not a colour');
  });
});
