/** A sponsor's own tint: a ground that text can be read on, and an edge that shows on every sheet. */
export interface Tint {
  readonly ground: string;
  readonly edge: string;
}

const HUES = 24;

/**
 * Tints for the sponsors of one board. Each asks for the hue its id leads to; where a neighbour of the ring has it, it goes on
 * to one that stands further off, as long as there is one.
 */
export function tintsOf(sponsorIds: readonly string[], mode: 'light' | 'dark'): ReadonlyMap<string, Tint> {
  const taken = new Set<number>();
  const isFree = (hue: number, room: number): boolean => Array.from({ length: 2 * room + 1 }, (_, at) => (hue + at - room + HUES) % HUES).every((one) => !taken.has(one));
  return new Map([...new Set(sponsorIds)].sort().map((id) => {
    const wished = hueOf(id);
    const tries = Array.from({ length: HUES }, (_, at) => (wished + 7 * at) % HUES);
    const hue = [2, 1, 0].map((room) => tries.find((one) => isFree(one, room))).find((one) => one !== undefined) ?? wished;
    taken.add(hue);
    return [id, tintOfHue(hue * (360 / HUES), mode)];
  }));
}

function hueOf(id: string): number {
  let number = 7;
  for (const letter of id) number = (number * 31 + letter.charCodeAt(0)) % 1_000_003;
  return number % HUES;
}

/** Of a hue in degrees: text of the theme reaches 4.5 : 1 on the ground, paper 4.5 : 1 on the edge. */
export function tintOfHue(hue: number, mode: 'light' | 'dark'): Tint {
  return mode === 'light' ? { ground: colour(hue, 0.6, 0.9), edge: colour(hue, 0.6, 0.27) } : { ground: colour(hue, 0.34, 0.22), edge: colour(hue, 0.6, 0.7) };
}

/** `#RRGGBB` of hue (degrees), saturation and lightness (0 to 1). Source: CSS Color Module Level 4 (W3C), section 7.1. */
export function colour(hue: number, saturation: number, lightness: number): string {
  const channel = (offset: number): string => {
    const k = (offset + hue / 30) % 12;
    const value = lightness - saturation * Math.min(lightness, 1 - lightness) * Math.max(-1, Math.min(k - 3, 9 - k, 1));
    return Math.round(value * 255).toString(16).padStart(2, '0');
  };
  return `#${channel(0)}${channel(8)}${channel(4)}`;
}

/** The mark beside the tint, so that nobody has to tell colours apart: "Snowmelt Creamery" is SC. */
export function initialsOf(name: string): string {
  const words = name.split(/[\s&-]+/).filter((word) => /[\p{L}\p{N}]/u.test(word));
  const [first = '?', second] = words;
  return (second === undefined ? first.slice(0, 2) : `${first.charAt(0)}${second.charAt(0)}`).toUpperCase();
}
