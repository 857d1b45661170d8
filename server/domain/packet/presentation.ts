import type { PacketWindow } from './night-for-packet.ts';

/**
 * What is handed over before the crowd, where the read kind is a presentation: "Game ball" before the
 * game is the game ball.
 */
export function presentedBy(readKindName: string, window: PacketWindow): string | null {
  if (window !== 'pregame' || !/\bball\b|\bpresentation\b/i.test(readKindName)) return null;
  return readKindName.replace(/\s*\bpresentation\b\s*/i, '').toLowerCase().trim() || null;
}
