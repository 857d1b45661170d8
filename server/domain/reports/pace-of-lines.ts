import type { Day } from '../day.ts';
import type { StatementPace } from './statement-content.ts';

/**
 * The pace of several promises as one: on each day that any of them names, what each of them last said is added up.
 *
 * @param lines each by day, the earliest first
 * @param throughOn later days are left out
 */
export function paceOfLines(lines: readonly (readonly StatementPace[])[], throughOn: Day): StatementPace[] {
  const days = [...new Set(lines.flatMap((points) => points.map(({ on }) => on)))].filter((on) => on <= throughOn).sort();
  const next = lines.map(() => 0);
  const last = lines.map(() => ({ expected: 0, given: 0 }));
  return days.map((on) => {
    for (const [place, points] of lines.entries()) {
      for (let at = next[place]!; at < points.length && points[at]!.on <= on; at += 1) {
        last[place] = points[at]!;
        next[place] = at + 1;
      }
    }
    const sum = (name: 'expected' | 'given') => last.reduce((all, point) => all + point[name], 0);
    return { on, expected: sum('expected'), given: sum('given') };
  });
}
