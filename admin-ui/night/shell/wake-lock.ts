import { useEffect } from 'react';

/** Keeps the screen awake while the desk is open. The lock falls when the page is hidden, so it is asked for again. */
export function useWakeLock(): void {
  useEffect(() => {
    let lock: WakeLockSentinel | null = null;
    let isLeft = false;
    const ask = async () => {
      if (document.visibilityState !== 'visible' || (lock && !lock.released)) return;
      // A low battery may refuse it; the desk works all the same.
      lock = (await navigator.wakeLock?.request('screen').catch(() => null)) ?? null;
      if (isLeft) void lock?.release();
    };
    const again = () => void ask();
    document.addEventListener('visibilitychange', again);
    again();
    return () => {
      isLeft = true;
      document.removeEventListener('visibilitychange', again);
      void lock?.release();
    };
  }, []);
}
