// @ts-expect-error: the package comes without types
import contrast from 'wcag-contrast';
import { describe, expect, test } from 'vitest';
import { CHART_INK, SERIES } from '../../admin-ui/charts/palette.ts';
import { LETTERS_BESIDE, shortLabel } from '../../admin-ui/charts/bars.ts';
import { paceLines } from '../../admin-ui/charts/pace.ts';
import { DARK, LIGHT } from '../../admin-ui/theme/palette.ts';

// Source: WCAG 2.2 (W3C Recommendation, 5 October 2023): success criteria 1.4.3 (words 4.5 : 1), 1.4.11 (parts of graphics 3 : 1), 1.4.1 (never by color alone).
const WORDS = 4.5;
const GRAPHICS = 3;

const lights = [['light', LIGHT], ['dark', DARK]] as const;

function luminanceOf(color: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) => Number.parseInt(color.slice(at, at + 2), 16) / 255).map((value) => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4)) as [number, number, number];
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** A color as a printer without colors has it: the grey of the same luminance (IEC 61966-2-1). */
function greyOf(color: string): string {
  const luminance = luminanceOf(color);
  const channel = Math.round(255 * (luminance <= 0.0031308 ? luminance * 12.92 : 1.055 * luminance ** (1 / 2.4) - 0.055));
  return `#${channel.toString(16).padStart(2, '0').repeat(3)}`;
}

describe.each(lights)('on the %s sheet', (lit, tone) => {
  const papers = [...(lit === 'light' ? ['#ffffff'] : []), tone.sheet];

  test.each(SERIES)('$name is seen on the paper', (look) => {
    for (const paper of papers) expect(contrast.hex(look[lit], paper)).toBeGreaterThanOrEqual(GRAPHICS);
  });

  test.each(SERIES.map((look, place) => [look.name, SERIES[(place + 1) % SERIES.length]!.name, place] as const))('%s and %s beside it are told apart in grey', (_, __, place) => {
    const [one, other] = [greyOf(SERIES[place]![lit]), greyOf(SERIES[(place + 1) % SERIES.length]![lit])];
    expect(contrast.hex(one, other)).toBeGreaterThanOrEqual(lit === 'light' ? 1.9 : 1.65);
  });

  test('no two colors are the same grey', () => {
    for (const one of SERIES) for (const other of SERIES) if (one !== other) expect(contrast.hex(greyOf(one[lit]), greyOf(other[lit]))).toBeGreaterThanOrEqual(1.25);
  });

  test('words can be read, and axis and today are seen', () => {
    const ink = CHART_INK[lit];
    for (const paper of papers) {
      for (const words of [ink.words, ink.softWords, ink.today]) expect(contrast.hex(words, paper)).toBeGreaterThanOrEqual(WORDS);
      expect(contrast.hex(ink.axis, paper)).toBeGreaterThanOrEqual(GRAPHICS);
    }
  });
});

test('a grey one step too light is refused by the same measure', () => {
  expect(contrast.hex('#949494', '#ffffff')).toBeGreaterThanOrEqual(GRAPHICS);
  expect(contrast.hex('#959595', '#ffffff')).toBeLessThan(GRAPHICS);
});

test('no two series share a dash, a mark or a pattern', () => {
  for (const of of ['dash', 'mark', 'pattern'] as const) expect(new Set(SERIES.map((look) => look[of])).size).toBe(SERIES.length);
});

test.each([
  ['Snowmelt', 'Snowmelt'],
  ['Snowmelt Creamery', 'Snowmelt\nCreamery'],
  ['Juniper & Pike Hardware', 'Juniper & Pike\nHardware'],
  ['Juniper & Pike Hardware of Tamarack', 'Juniper & Pike\nHardware of…'],
  ['Juniper & Pike Hardware: Concession read', 'Juniper & Pike…\nConcession read'],
  ['Halvorsenorthodontics Group', 'Halvorsenorthod…\nGroup'],
])('%s stands beside its bar as %j', (label, shown) => {
  expect(shortLabel(label)).toBe(shown);
});

test.each([
  ['Halvorsen Orthodontics of Tamarack: Sponsored game ball', 'Halvorsen Orthodontics of Tamarack\nSponsored game ball'],
  ['Halvorsen Orthodontics near Tamarack: Sponsored game ball', 'Halvorsen Orthodontics near Tamar…\nSponsored game ball'],
])('at a desk there is room for %s as %j', (label, shown) => {
  expect(shortLabel(label, LETTERS_BESIDE.wide.letters)).toBe(shown);
});

test('what was given is drawn up to today, and what is expected to the end', () => {
  const point = (on: string, expected: number, given: number) => ({ on: on as never, expected, given });
  expect(paceLines({ points: [point('2026-12-11', 8, 3), point('2026-12-04', 4, 3), point('2026-12-18', 12, 3)], today: '2026-12-11' })).toEqual({
    days: ['2026-12-04', '2026-12-11', '2026-12-18'], expected: [4, 8, 12], given: [3, 3, null],
  });
});
