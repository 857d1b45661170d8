import type { ReactNode } from 'react';
import type { Pattern } from './palette.ts';

const LINES: Record<Exclude<Pattern, 'solid' | 'dots'>, string> = {
  rising: 'M-2,2 l4,-4 M0,8 l8,-8 M6,10 l4,-4',
  falling: 'M-2,6 l4,4 M0,0 l8,8 M6,-2 l4,4',
  level: 'M0,4 h8',
  upright: 'M4,0 v8',
};

function drawn(pattern: Pattern, paper: string): ReactNode {
  if (pattern === 'solid') return null;
  if (pattern === 'dots') return <circle cx="4" cy="4" r="1.6" fill={paper} />;
  return <path d={LINES[pattern]} stroke={paper} strokeWidth="1.6" fill="none" />;
}

/** A fill that stays a color and is crossed by the paper, so that bars differ in print without colors. */
export function BarPattern({ id, color, pattern, paper }: { id: string; color: string; pattern: Pattern; paper: string }) {
  return (
    <pattern id={id} width="8" height="8" patternUnits="userSpaceOnUse">
      <rect width="8" height="8" fill={color} />
      {drawn(pattern, paper)}
    </pattern>
  );
}
