import type { CueBuilder, Spot } from './cue-builder.ts';
import { NOWHERE } from './cue-builder.ts';
import { honours } from './honours-cues.ts';
import type { GameForPacket } from './night-for-packet.ts';
import { reads } from './opening.ts';
import { EMERGENCY_MOMENTS } from './script.ts';
import type { Variables } from './variables-of-night.ts';
import { mainGameOf } from './variables-of-night.ts';

/** After a game: the last reads, then good night, or what comes next tonight. */
export function afterTheGame(builder: CueBuilder, game: GameForPacket, place: number, variables: Variables): void {
  const { games, honours: lists = [] } = builder.night;
  const spot: Spot = { gameId: game.gameId, window: 'postgame', windowKey: 'postgame' };
  if (game === mainGameOf(games)) for (const list of lists) if (list.window === 'postgame') honours(builder, list, spot, variables);
  reads(builder, game, 'postgame', variables);
  builder.moment(place === games.length - 1 ? 'postgame' : 'betweenGames', spot, variables);
}

/** Forms that are filled in and read when somebody brings one; then the emergencies, last and apart. */
export function noticesAndEmergencies(builder: CueBuilder, variables: Variables): void {
  for (const moment of ['fundraiser', 'club', 'camp', 'vehicleNotice', 'lostChild', 'foundItem'] as const) builder.moment(moment, NOWHERE, variables);
  for (const moment of EMERGENCY_MOMENTS) builder.emergency(moment, variables);
}
