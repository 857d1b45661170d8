import { kindOfWindow } from '../../season/window-names.ts';
import type { WindowKind } from '../../season/sport-rules.ts';
import { limitsOf } from '../../sponsorship/company/limits.ts';
import type { CompanyLimit } from '../../sponsorship/company/limits.ts';

interface LimitedPromise {
  readonly sponsorId: string;
  readonly categoryId: string;
  /** windows by kind or key, the preferred first */
  readonly kindWindows: readonly string[];
}

/**
 * A promise without what exclusive rights keep for a competitor: named games fall out, and a kind of window falls out as
 * soon as it is kept in one of the games, so that no plan can break the right. The rest may then find too few places,
 * which the plan says.
 */
export function keepOut<P extends LimitedPromise, G extends { readonly id: string }>(promise: P, games: readonly G[], limits: readonly CompanyLimit[]): { promise: P; games: readonly G[] } {
  const others = limitsOf(limits, promise);
  if (others.length === 0) return { promise, games };
  const shut = new Set(others.filter((limit) => limit.windowKinds === null).flatMap((limit) => limit.gameIds));
  const open = games.filter((game) => !shut.has(game.id));
  const kept = new Set(others.filter((limit) => open.some((game) => limit.gameIds.includes(game.id))).flatMap((limit) => limit.windowKinds ?? []));
  const kindWindows = promise.kindWindows.filter((window) => !kept.has(kindOfWindow(window) as WindowKind));
  return { promise: { ...promise, kindWindows }, games: open };
}
