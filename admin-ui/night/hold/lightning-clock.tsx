import { useEffect, useState } from 'react';
import { lightningLeftSeconds } from '../../../server/domain/night/desk/reading/hold.ts';
import type { DeskLine } from '../../../server/domain/night/desk/desk-entry.ts';

const SEEN = 'rafterline-flash-seen';

/** When this device first knew of another device's flash: that one's clock may be hours off. */
function knownSince({ id, isOwn, occurredAt }: DeskLine): number {
  if (isOwn) return Date.parse(occurredAt);
  const seen = sessionStorage.getItem(`${SEEN} ${id}`);
  if (seen !== null) return Number(seen);
  const now = Date.now();
  sessionStorage.setItem(`${SEEN} ${id}`, String(now));
  return now;
}

/** Seconds until play may restart after lightning, counting; null without a flash. */
export function useLightningSeconds(flash: DeskLine | null): number | null {
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    if (flash === null) return undefined;
    const timer = setInterval(() => setNow(Date.now()), 1000);
    return () => clearInterval(timer);
  }, [flash]);
  return flash === null ? null : lightningLeftSeconds((Math.max(now, knownSince(flash)) - knownSince(flash)) / 1000);
}

export const minutesText = (seconds: number): string => `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;

export function LightningClock({ flash }: { flash: DeskLine | null }) {
  const left = useLightningSeconds(flash);
  if (left === null) return null;
  return (
    <p className="desk-hold-clock" role="timer">
      <b>{minutesText(left)}</b> {left === 0 ? 'Thirty minutes since the last thunder or flash. The officials decide.' : 'until play may restart; each new flash or thunder begins the thirty minutes again.'}
    </p>
  );
}
