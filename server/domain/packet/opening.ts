import type { CueBuilder, Spot } from './cue-builder.ts';
import { ANTHEM_FIRST_VERSE } from './default-scripts.ts';
import { honours } from './honours-cues.ts';
import { profileAt } from './game-windows.ts';
import { lineUpSegments } from './line-up-forms.ts';
import { teamSheet } from './line-up.ts';
import type { GameForPacket, PacketSettings, PacketWindow } from './night-for-packet.ts';
import { anthemVariant } from './script.ts';
import type { Script } from './script.ts';
import type { Variables } from './variables-of-night.ts';
import { mainGameOf } from './variables-of-night.ts';

/** The form of the anthem that is given tonight; a library without that form gives what it has of "sung" or "played". */
export function anthemOf(settings: PacketSettings): (scripts: Script[]) => Script[] {
  const wanted = anthemVariant(settings.anthem, settings.flag);
  const other = settings.anthem === 'sung' ? 'played' : 'sung';
  return (scripts) => {
    const exact = scripts.filter((script) => script.variant === wanted);
    return exact.length > 0 ? exact : scripts.filter((script) => !(script.variant ?? script.key).includes(other));
  };
}

/** The reads of one kind of window, or of one window of a game, in the order of their windows and places. */
export function reads(builder: CueBuilder, game: GameForPacket, window: PacketWindow, variables: Variables, windowKey?: string): void {
  const number = (key: string): number => Number(/\d+$/.exec(key)?.[0] ?? 1);
  game.placements
    .filter((placement) => placement.window === window && (windowKey === undefined || placement.windowKey === windowKey))
    .sort((one, other) => number(one.windowKey) - number(other.windowKey) || one.place - other.place)
    .forEach((placement) => builder.placement(placement, game.gameId, variables));
}

/** Until the start: the opening before the first game, the anthem before the one the night is for, both line-ups before each. */
export function beforeTheGame(builder: CueBuilder, game: GameForPacket, place: number, variables: Variables): void {
  const { night } = builder;
  const spot: Spot = { gameId: game.gameId, window: 'pregame', windowKey: 'pregame' };
  if (place === 0) {
    for (const moment of ['welcome', 'conduct', 'substances', 'seating', 'mustCarryPregame'] as const) builder.moment(moment, spot, variables);
  }
  const isMain = game === mainGameOf(night.games);
  if (isMain) {
    if (night.settings.prayer) builder.moment('prayer', spot, variables);
    builder.moment('anthem', spot, variables, anthemOf(night.settings));
    builder.verse(ANTHEM_FIRST_VERSE, spot);
  }
  reads(builder, game, 'pregame', variables);
  if (isMain) for (const list of night.honours ?? []) if (list.window === 'pregame') honours(builder, list, spot, variables);
  if (night.settings.officialsIntroduced) builder.moment('officials', spot, variables);
  for (const side of ['visitors', 'home'] as const) {
    const sheet = teamSheet(game, side);
    builder.lineUp(sheet, spot, variables, lineUpSegments(sheet, builder.voice, profileAt(night, game), side === 'visitors' ? teamSheet(game, 'home') : null));
  }
}
