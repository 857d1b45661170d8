/** What was read of a commitment in one game that is over. */
export interface GameOver {
  readonly gameId: string;
  readonly given: number;
}

/**
 * The games in which fewer reads were given than "at least so many a game" says. Replacements count: the sponsor was
 * heard in that game.
 *
 * @param least reads; null where nothing was said
 * @source common practice, no source
 */
export function brokenFloorsOf(least: number | null, games: readonly GameOver[]): (GameOver & { readonly least: number })[] {
  return least === null ? [] : games.filter((game) => game.given < least).map((game) => ({ ...game, least }));
}
