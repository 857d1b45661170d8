import type { PacketWindow } from './night-for-packet.ts';

/** What is handed over before the crowd: only before the game; the same kind of read in another window is a plain read. */
export function presentedIn(window: PacketWindow, presents: string | null): string | null {
  return window === 'pregame' ? presents : null;
}
