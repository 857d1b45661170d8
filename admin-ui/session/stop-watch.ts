import { useEffect, useRef, useState } from 'react';

interface Watch {
  state: 'ready' | 'running' | 'done';
  seconds: number;
}

const READY: Watch = { state: 'ready', seconds: 0 };

/** A stop-watch; the time it answers is exact, the display moves four times a second. */
export function useStopWatch() {
  const startedAt = useRef(0);
  const [watch, setWatch] = useState(READY);
  const elapsed = () => (performance.now() - startedAt.current) / 1000;
  useEffect(() => {
    if (watch.state !== 'running') return undefined;
    const timer = setInterval(() => setWatch((now) => (now.state === 'running' ? { ...now, seconds: elapsed() } : now)), 250);
    return () => clearInterval(timer);
  }, [watch.state]);
  return {
    ...watch,
    start: () => {
      startedAt.current = performance.now();
      setWatch({ state: 'running', seconds: 0 });
    },
    stop: () => setWatch({ state: 'done', seconds: elapsed() }),
    clear: () => setWatch(READY),
  };
}
