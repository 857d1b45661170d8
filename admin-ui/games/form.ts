import type { RaRecord } from 'react-admin';
import { clockTyped } from '../format/instant.ts';
import type { Game } from './types.ts';

/** The fields the form edits that the view holds in another shape. */
export function gameForForm(game: Game): object {
  return {
    ...game,
    starts: game.startsAfterGameId ? 'after' : 'clock',
    startsAtClock: game.startsAfterGameId ? null : clockTyped(game.startsAt) || null,
    homeTeamId: game.participants.find((one) => one.isHome)?.teamId,
    visitorTeamIds: game.participants.filter((one) => !one.isHome).map((one) => one.teamId),
  };
}

/** What is sent: an hour or a float, never both. */
export function gameFromForm({ starts, ...values }: RaRecord): Record<string, unknown> {
  return starts === 'after'
    ? { ...values, startsAtClock: null }
    : { ...values, startsAfterGameId: null, startsAfterMinutes: null };
}
