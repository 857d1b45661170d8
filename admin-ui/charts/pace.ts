import type { PacePoint } from '../../server/reports/fulfillment/fulfillment.dto.ts';

export type { PacePoint };

export interface PaceProps {
  /** by day, the earliest first */
  points: readonly PacePoint[];
  /** today in the department's zone; what was given is drawn up to it */
  today: string;
}

/** The points of a day that are drawn: of what is still to come only what is expected. */
export function paceLines({ points, today }: PaceProps): { days: string[]; expected: number[]; given: (number | null)[] } {
  const shown = points.toSorted((one, other) => one.on.localeCompare(other.on));
  return { days: shown.map(({ on }) => on), expected: shown.map(({ expected }) => expected), given: shown.map(({ on, given }) => (on > today ? null : given)) };
}
