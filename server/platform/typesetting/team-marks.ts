/** How a team is told apart on paper: a light tint, a strip in its own dark colour, and a pattern that survives a black-and-white printer. */
export interface TeamMark {
  /** `#rrggbb`, light enough for black text (contrast of at least 4.5 to 1). */
  readonly tint: string;
  /** `#rrggbb`, dark enough to be read on white (at least 4.5 to 1). */
  readonly edge: string;
  readonly pattern: 'solid' | 'hatched';
  readonly letter: 'H' | 'V';
}

export const TEXT_COLOUR = '#111111';

interface Lch { readonly lightness: number; readonly chroma: number; readonly hue: number }

function channels(colour: string): [number, number, number] {
  if (!/^#[0-9a-f]{6}$/i.test(colour)) throw new RangeError(`${colour} is not a colour`);
  const value = Number.parseInt(colour.slice(1), 16);
  return [(value >> 16) & 255, (value >> 8) & 255, value & 255];
}

function linear(channel: number): number {
  const share = channel / 255;
  return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
}

/** Relative luminance, 0 to 1. @source WCAG 2.2 */
function luminance(colour: string): number {
  const [red, green, blue] = channels(colour);
  return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
}

/** Contrast of two colours, 1 to 21. @source WCAG 2.2, success criterion 1.4.3 */
export function contrastOf(one: string, other: string): number {
  const [low, high] = [luminance(one), luminance(other)].sort((a, b) => a - b) as [number, number];
  return (high + 0.05) / (low + 0.05);
}

/** @source Björn Ottosson, "A perceptual color space for image processing" (OKLab) */
function lchOf(colour: string): Lch {
  const [red, green, blue] = channels(colour).map(linear) as [number, number, number];
  const long = Math.cbrt(0.4122214708 * red + 0.5363325363 * green + 0.0514459929 * blue);
  const medium = Math.cbrt(0.2119034982 * red + 0.6806995451 * green + 0.1073969566 * blue);
  const short = Math.cbrt(0.0883024619 * red + 0.2817188376 * green + 0.6299787005 * blue);
  const a = 1.9779984951 * long - 2.428592205 * medium + 0.4505937099 * short;
  const b = 0.0259040371 * long + 0.7827717662 * medium - 0.808675766 * short;
  return {
    lightness: 0.2104542553 * long + 0.793617785 * medium - 0.0040720468 * short,
    chroma: Math.hypot(a, b),
    hue: Math.atan2(b, a),
  };
}

function colourOf({ lightness, chroma, hue }: Lch): string {
  const a = chroma * Math.cos(hue);
  const b = chroma * Math.sin(hue);
  const long = (lightness + 0.3963377774 * a + 0.2158037573 * b) ** 3;
  const medium = (lightness - 0.1055613458 * a - 0.0638541728 * b) ** 3;
  const short = (lightness - 0.0894841775 * a - 1.291485548 * b) ** 3;
  const shares = [
    4.0767416621 * long - 3.3077115913 * medium + 0.2309699292 * short,
    -1.2684380046 * long + 2.6097574011 * medium - 0.3413193965 * short,
    -0.0041960863 * long - 0.7034186147 * medium + 1.707614701 * short,
  ];
  return `#${shares
    .map((share) => Math.min(1, Math.max(0, share)))
    .map((share) => (share <= 0.0031308 ? 12.92 * share : 1.055 * share ** (1 / 2.4) - 0.055))
    .map((share) => Math.round(share * 255).toString(16).padStart(2, '0'))
    .join('')}`;
}

const GREY_CHROMA = 0.03;
const TINT_CHROMA = 0.055;
/** The home tint is lighter, so that a grey printer still shows two greys. */
const LIGHTNESS = { home: 0.95, visitors: 0.86 } as const;

function tintOf(colour: string, lightness: number): string {
  const { chroma, hue } = lchOf(colour);
  return colourOf({ lightness, chroma: chroma < GREY_CHROMA ? 0 : Math.min(chroma, TINT_CHROMA), hue });
}

function edgeOf(colour: string): string {
  const { chroma, hue, lightness } = lchOf(colour);
  let edge = { lightness: Math.min(lightness, 0.62), chroma, hue };
  while (contrastOf(colourOf(edge), '#ffffff') < 4.5) edge = { ...edge, lightness: edge.lightness - 0.02 };
  return colourOf(edge);
}

function hueGap(one: string, other: string): number {
  const [first, second] = [lchOf(one), lchOf(other)];
  if (first.chroma < GREY_CHROMA && second.chroma < GREY_CHROMA) return 0;
  if (first.chroma < GREY_CHROMA || second.chroma < GREY_CHROMA) return Math.PI;
  const gap = Math.abs(first.hue - second.hue) % (2 * Math.PI);
  return Math.min(gap, 2 * Math.PI - gap);
}

const CLASH = Math.PI / 5;

export interface TeamColours {
  /** `#RRGGBB` */
  readonly first: string;
  readonly second: string;
}

/**
 * Two marks from the colours of the teams. The visitors give way when the hues clash: their second
 * colour is taken, and when that clashes too, a grey. The pattern tells the teams apart without colour.
 *
 * @throws RangeError when a colour is not `#RRGGBB`
 */
export function teamMarks(
  home: TeamColours,
  visitors: TeamColours,
): { readonly home: TeamMark; readonly visitors: TeamMark } {
  const own = [visitors.first, visitors.second];
  const taken = own.find((colour) => hueGap(home.first, colour) >= CLASH) ?? '#777777';
  return {
    home: { tint: tintOf(home.first, LIGHTNESS.home), edge: edgeOf(home.first), pattern: 'solid', letter: 'H' },
    visitors: { tint: tintOf(taken, LIGHTNESS.visitors), edge: edgeOf(taken), pattern: 'hatched', letter: 'V' },
  };
}
