import { StrictMode, Suspense, lazy } from 'react';
import { createRoot } from 'react-dom/client';
import { ForSponsors, isForSponsors } from './for-sponsors/app.tsx';
import './theme/fonts.css';

/** The office is only fetched where somebody works in it. */
const Office = lazy(() => import('./app.tsx').then(({ App }) => ({ default: App })));

const outside = isForSponsors();
// A second link, or the office, pasted over the address is another page.
window.addEventListener('hashchange', () => {
  if (outside || isForSponsors()) window.location.reload();
});

createRoot(document.getElementById('root')!).render(
  <StrictMode>
    {outside ? (
      <ForSponsors />
    ) : (
      <Suspense fallback={null}>
        <Office />
      </Suspense>
    )}
  </StrictMode>,
);
