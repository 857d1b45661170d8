import type { CueBuilder, Spot } from './cue-builder.ts';
import { breaksOf, middleOf, profileAt } from './game-windows.ts';
import type { GameBreak } from './game-windows.ts';
import { honours } from './honours-cues.ts';
import type { GameForPacket } from './night-for-packet.ts';
import { reads } from './opening.ts';
import type { Variables } from './variables-of-night.ts';
import { mainGameOf } from './variables-of-night.ts';

function spotOf(game: GameForPacket, { windowKey, isHalftime }: GameBreak): Spot {
  return { gameId: game.gameId, window: isHalftime ? 'halftime' : 'betweenPeriods', windowKey };
}

/** Halftime, or what stands in its place in a sport that has none. */
function middle(builder: CueBuilder, game: GameForPacket, at: GameBreak, variables: Variables): void {
  const spot = spotOf(game, at);
  if (at.isHalftime) builder.moment('halftime', spot, variables);
  builder.moment('mustCarryHalftime', spot, variables);
  if (game === mainGameOf(builder.night.games)) {
    builder.moment('recognition', spot, variables);
    for (const list of builder.night.honours ?? []) if (list.window === 'halftime') honours(builder, list, spot, variables);
  }
  builder.moment('floorSafety', spot, variables);
  reads(builder, game, spot.window!, variables, at.windowKey);
  builder.moment('concession', spot, variables);
}

/** From the start to the end: what is read when it happens, the time-outs next in line, then break after break. */
export function duringTheGame(builder: CueBuilder, game: GameForPacket, place: number, variables: Variables): void {
  if (place === 0) builder.moment('callsOfPlay', { gameId: game.gameId, window: null, windowKey: null }, variables);
  for (const mention of game.mentions) builder.mention(mention, game.gameId, game.home.nickname);
  reads(builder, game, 'deadBall', variables);
  reads(builder, game, 'timeout', variables);
  const breaks = breaksOf(profileAt(builder.night, game), game);
  const halfway = middleOf(breaks);
  const [first] = breaks;
  if (first) builder.moment('periodScore', spotOf(game, first), variables);
  for (const one of breaks) {
    if (one === halfway) middle(builder, game, one, variables);
    else reads(builder, game, 'betweenPeriods', variables, one.windowKey);
  }
}
