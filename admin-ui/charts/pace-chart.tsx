import { Suspense, lazy } from 'react';
import { Drawing, PACE_HEIGHT } from './drawing.tsx';
import type { PaceProps } from './pace.ts';

const PaceDrawing = lazy(() => import('./pace-drawing.tsx'));

/** What should have been given by the end of each day of games beside what was, in steps, with a line for today. */
export function PaceChart(props: PaceProps) {
  return (
    <Drawing height={PACE_HEIGHT}>
      <Suspense fallback={null}><PaceDrawing {...props} /></Suspense>
    </Drawing>
  );
}
