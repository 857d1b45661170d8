// @ts-expect-error: the package comes without types
import contrast from 'wcag-contrast';
import { describe, expect, test } from 'vitest';
import { BAR, DARK, LIGHT } from '../../admin-ui/theme/palette.ts';

/** The ratio as WCAG 2.2 (W3C Recommendation, 5 October 2023) defines it under "contrast ratio". */
function ratioOf(first: string, second: string): number {
  const channel = (value: number) => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4);
  const luminance = (colour: string) => {
    const [red, green, blue] = [1, 3, 5].map((at) => channel(Number.parseInt(colour.slice(at, at + 2), 16) / 255)) as [number, number, number];
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  };
  const [dark, light] = [luminance(first), luminance(second)].sort((a, b) => a - b) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

test.each([
  ['#767676', 4.5422, true],
  ['#777777', 4.4781, false],
])('on white, %s has a contrast of %d, which passes 4.5 for text: %s', (grey, ratio, passes) => {
  // Source: WCAG 2.2, W3C Recommendation 5 October 2023, success criterion 1.4.3.
  expect(ratioOf(grey, '#ffffff')).toBeCloseTo(ratio, 4);
  expect(contrast.hex(grey, '#ffffff')).toBeCloseTo(ratio, 2);
  expect(ratioOf(grey, '#ffffff') >= 4.5).toBe(passes);
});

/** Success criterion 1.4.3: text needs 4.5 : 1. Success criterion 1.4.11: edges of controls and the ring of focus need 3 : 1. */
const TEXT = 4.5;
const EDGE = 3;

const themes: [string, Record<keyof typeof LIGHT, string>][] = [['light', LIGHT], ['dark', DARK]];

describe.each(themes)('in the %s theme', (_, tone) => {
  const grounds = ['ground', 'sheet', 'band'] as const;
  const words = ['ink', 'softInk', 'action', 'amberInk', 'bad', 'good'] as const;
  const onAlerts = ['badGround', 'goodGround', 'careGround', 'noteGround'] as const;
  const pairs: [string, string, number][] = [
    ...words.flatMap((word) => grounds.map((ground) => [word, ground, TEXT] as [string, string, number])),
    ...onAlerts.map((ground) => ['ink', ground, TEXT] as [string, string, number]),
    ['bad', 'badGround', TEXT],
    ['good', 'goodGround', TEXT],
    ['action', 'noteGround', TEXT],
    ['amberInk', 'careGround', TEXT],
    ['actionInk', 'action', TEXT],
    ['edge', 'sheet', EDGE],
    ['edge', 'ground', EDGE],
    ['amberInk', 'ground', EDGE],
  ];

  test.each(pairs)('%s on %s reaches %d to 1', (front, back, least) => {
    const [ink, paper] = [tone[front as keyof typeof LIGHT], tone[back as keyof typeof LIGHT]];
    expect(ratioOf(ink, paper)).toBeGreaterThanOrEqual(least);
    expect(contrast.hex(ink, paper)).toBeGreaterThanOrEqual(least);
  });
});

test('the bar above every page is readable, and its ring of focus shows', () => {
  for (const front of [BAR.ink, BAR.softInk, BAR.amber]) expect(contrast.hex(front, BAR.ground)).toBeGreaterThanOrEqual(TEXT);
});
