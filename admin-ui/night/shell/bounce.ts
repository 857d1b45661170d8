import { useRef } from 'react';

/** A second tap on the same place so soon is a bounce of the first. */
export const BOUNCE_MILLISECONDS = 500;

/**
 * Tells whether a tap on a place, or a press of its key, is a bounce of the last one that counted. For what moves on by
 * itself, so that the same tap would mean the next thing.
 */
export function useBounceGuard(): (place: string) => boolean {
  const counted = useRef(new Map<string, number>());
  return (place) => {
    const now = performance.now();
    if (now - (counted.current.get(place) ?? -Infinity) < BOUNCE_MILLISECONDS) return true;
    counted.current.set(place, now);
    return false;
  };
}
