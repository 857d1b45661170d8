import { useMemo, useRef } from 'react';
import type { DeskGame } from '../../../server/domain/night/desk/bundle.ts';
import type { NewDeskEntry } from '../../../server/domain/night/desk/desk-entry.ts';
import { gamePlayed } from '../../../server/domain/night/desk/sheet/game-played.ts';
import { periodName } from '../../../server/domain/night/desk/sheet/period.ts';
import { rosterTonight } from '../../../server/domain/night/desk/sheet/roster-tonight.ts';
import { SheetKeeper } from '../../../server/domain/night/desk/sheet/sheet-keeper.ts';
import { currentPeriod } from '../../../server/domain/night/desk/sheet/table-sheet.ts';
import type { TableSheet } from '../../../server/domain/night/desk/sheet/table-sheet.ts';
import type { TeamSheet } from '../../../server/domain/packet/packet.ts';
import { useDesk } from '../desk.ts';
import { setAtHand, takeClock, useAtHand } from './at-hand.ts';

/** The game that is played, as the table sees it. */
export interface Table {
  readonly game: DeskGame;
  /** null for a sport the house does not know */
  readonly sheet: TableSheet | null;
  /** the lists as they are worn tonight */
  readonly visitors: TeamSheet;
  readonly home: TeamSheet;
  readonly period: number;
  /** as entries name it; null where the sport has no periods to speak of */
  readonly periodText: string | null;
  /** What every entry of this game says by itself: game, period, and a clock that was typed for it. */
  place(): Pick<NewDeskEntry, 'gameId' | 'period' | 'clock'>;
}

/** Null on a night without games. */
export function useTable(): Table | null {
  const { bundle, lines } = useDesk();
  const hand = useAtHand();
  const played = useMemo(() => gamePlayed(bundle.games, lines), [bundle.games, lines]);
  const game = bundle.games.find((one) => one.gameId === hand.gameId) ?? played ?? bundle.games[0] ?? null;
  const keeper = useRef<{ game: DeskGame; keeper: SheetKeeper } | null>(null);
  if (game?.rules && keeper.current?.game !== game) keeper.current = { game, keeper: new SheetKeeper(game, game.rules) };
  const sheet = useMemo(() => (game?.rules && keeper.current ? keeper.current.keeper.of(lines) : null), [game, lines]);
  const [visitors, home] = useMemo(() => (game ? [game.visitors, game.home].map((team) => rosterTonight(team, lines, game.ourTeamIds.includes(team.teamId))) : [null, null]), [game, lines]);
  if (!game || !visitors || !home) return null;
  const period = hand.period ?? (sheet ? currentPeriod(sheet) : 1);
  const periodText = game.rules && game.rules.bouts.length === 0 ? periodName(game.rules, period) : null;
  const place = () => {
    // Whoever has tapped keeps the game: what another table logs late of an earlier one moves nothing under the thumb.
    setAtHand({ gameId: game.gameId });
    return { gameId: game.gameId, period: periodText, clock: takeClock() };
  };
  return { game, sheet, visitors, home, period, periodText, place };
}
