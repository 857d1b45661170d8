import {
  clampChroma, converter, differenceCiede2000, filterDeficiencyDeuter, filterDeficiencyProt, filterDeficiencyTrit, filterGrayscale, formatHex, parse, wcagContrast,
} from 'culori';
import type { Color, Oklch } from 'culori';

/** How a team is told apart on paper: a light tint, a strip in its own dark colour, and a pattern that survives a black-and-white printer. */
export interface TeamMark {
  /** `#rrggbb`, light enough for black text (contrast of at least 4.5 to 1). */
  readonly tint: string;
  /** `#rrggbb`, dark enough to be read on white (at least 4.5 to 1). */
  readonly edge: string;
  readonly pattern: 'solid' | 'hatched';
  readonly letter: 'H' | 'V';
}

export interface TeamColours {
  /** `#RRGGBB` */
  readonly first: string;
  readonly second: string;
}

export const TEXT_COLOUR = '#111111';
/** What two tints differ by at least, in CIEDE2000, for every reader and in grey. */
export const TINTS_DIFFER_BY = 10;

const oklch = converter('oklch');
const difference = differenceCiede2000();

/**
 * The same page as it reaches different eyes: with all three cones, without the red, the green or the
 * blue ones, and from a printer without colour.
 *
 * @source Machado, Oliveira, Fernandes, "A Physiologically-based Model for Simulation of Color Vision Deficiency" (2009), as the library has it
 */
export const SIGHTS: Readonly<Record<string, (colour: Color) => Color>> = {
  normal: (colour) => colour,
  protanopic: filterDeficiencyProt(1),
  deuteranopic: filterDeficiencyDeuter(1),
  tritanopic: filterDeficiencyTrit(1),
  grey: filterGrayscale(1),
};

function colourOf(words: string): Color {
  const colour = /^#[0-9a-f]{6}$/i.test(words) ? parse(words) : undefined;
  if (colour === undefined) throw new RangeError(`${words} is not a colour`);
  return colour;
}

/** Contrast of two colours, 1 to 21. @source WCAG 2.2, success criterion 1.4.3 */
export function contrastOf(one: string, other: string): number {
  return wcagContrast(colourOf(one), colourOf(other));
}

/** The smallest difference of two colours over all sights, in CIEDE2000. */
export function leastDifference(one: string, other: string): number {
  const [first, second] = [colourOf(one), colourOf(other)];
  return Math.min(...Object.values(SIGHTS).map((seen) => difference(seen(first), seen(second))));
}

const GREY_CHROMA = 0.03;
const TINT_CHROMA = 0.055;
/** The home tint is lighter, so that a grey printer still shows two greys. */
const HOME_LIGHTNESS = 0.95;
const VISITORS_LIGHTNESS = 0.87;
const STEP = 0.01;

function hexOf(colour: Oklch): string {
  return formatHex(clampChroma(colour, 'oklch'));
}

/** The same hue, made light: a dark or glaring colour becomes a tint that black letters stand on. */
function tintOf(colour: string, lightness: number): string {
  const { c, h } = oklch(colourOf(colour));
  return hexOf({ mode: 'oklch', l: lightness, c: c < GREY_CHROMA ? 0 : Math.min(c, TINT_CHROMA), h });
}

function edgeOf(colour: string): string {
  let edge: Oklch = oklch(colourOf(colour));
  edge = { ...edge, l: Math.min(edge.l, 0.62) };
  while (contrastOf(hexOf(edge), '#ffffff') < 4.5) edge = { ...edge, l: edge.l - 0.02 };
  return hexOf(edge);
}

/** How far apart two hues are, in degrees; a grey is far from every hue and near every grey. */
function hueGap(one: string, other: string): number {
  const [first, second] = [oklch(colourOf(one)), oklch(colourOf(other))];
  const greys = [first, second].filter((colour) => colour.c < GREY_CHROMA).length;
  if (greys > 0) return greys === 2 ? 0 : 180;
  const gap = Math.abs((first.h ?? 0) - (second.h ?? 0)) % 360;
  return Math.min(gap, 360 - gap);
}

const CLASH_DEGREES = 36;

/**
 * Two marks from the colours of the teams. The visitors give way when the hues clash: their second
 * colour is taken, and when that clashes too, a grey. Their tint is darkened until it differs from the
 * home tint for every reader. The pattern tells the teams apart without any colour.
 *
 * @throws RangeError when a colour is not `#RRGGBB`
 */
export function teamMarks(home: TeamColours, visitors: TeamColours): { readonly home: TeamMark; readonly visitors: TeamMark } {
  const taken = [visitors.first, visitors.second].find((colour) => hueGap(home.first, colour) >= CLASH_DEGREES) ?? '#777777';
  const homeTint = tintOf(home.first, HOME_LIGHTNESS);
  let lightness = VISITORS_LIGHTNESS;
  while (leastDifference(homeTint, tintOf(taken, lightness)) < TINTS_DIFFER_BY) lightness -= STEP;
  return {
    home: { tint: homeTint, edge: edgeOf(home.first), pattern: 'solid', letter: 'H' },
    visitors: { tint: tintOf(taken, lightness), edge: edgeOf(taken), pattern: 'hatched', letter: 'V' },
  };
}
