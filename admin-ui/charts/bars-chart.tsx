import { Suspense, lazy } from 'react';
import type { BarsProps } from './bars.ts';
import { Drawing, heightOfBars } from './drawing.tsx';

const BarsDrawing = lazy(() => import('./bars-drawing.tsx'));

/**
 * Bars beside or on one another, upright for what has an order (months), lying for what has a name (sponsors).
 * The drawing program is fetched when a chart is to be seen, so that the other pages do not pay for it.
 */
export function BarsChart(props: BarsProps) {
  return (
    <Drawing height={heightOfBars(props)}>
      <Suspense fallback={null}><BarsDrawing {...props} /></Suspense>
    </Drawing>
  );
}
