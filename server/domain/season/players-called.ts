import { foldedText } from './import-headings.ts';

export interface PlayerSeen {
  readonly name: string;
  /** number, team and season of the list that the player stood on last; null for none */
  readonly lastSeen?: string | null;
}

/** Those whose name is the same but for accents, case and spaces. */
export function playersCalled<Player extends PlayerSeen>(name: string, players: readonly Player[]): Player[] {
  return players.filter((player) => foldedText(player.name) === foldedText(name));
}

/** "12 of Varsity boys, Basketball 2026-27; 4 of Sophomores, Basketball 2026-27" */
export function playersInWords(players: readonly PlayerSeen[]): string {
  return players.map((player) => player.lastSeen ?? 'one who is on no list').join('; ');
}
