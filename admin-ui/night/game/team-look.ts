import type { CSSProperties } from 'react';
import type { TeamSheet } from '../../../server/domain/packet/packet.ts';

/** Dark letters on a light color and light ones on a dark. @source WCAG 2 relative luminance, with the threshold at equal contrast */
function inkOn(colour: string): string {
  const [red, green, blue] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue > 0.179 ? '#000000' : '#ffffff';
}

/** A team's color and what can be read on it, for the style of an element. */
export function teamLook(team: TeamSheet): CSSProperties {
  return { '--team': team.firstColour, '--team-ink': inkOn(team.firstColour) } as CSSProperties;
}
