import { Suspense, lazy } from 'react';
import { usePlace } from './address.ts';
import { NightList } from './opening/night-list.tsx';
import { OpenNight } from './opening/open-night.tsx';
import { StartByLink } from './opening/start-by-link.tsx';
import { StoredDesk } from './shell/stored-desk.tsx';

/** A piece of its own: the table never loads it, and the public loads little else. */
const AskPage = lazy(() => import('./ask/ask-page.tsx').then(({ AskPage: page }) => ({ default: page })));

export function App() {
  const place = usePlace();
  if (place.at === 'open') return <OpenNight key={place.nightId} nightId={place.nightId} />;
  if (place.at === 'night') return <StoredDesk key={place.nightId} nightId={place.nightId} />;
  if (place.at === 'link') return <StartByLink key={place.token} token={place.token} />;
  if (place.at === 'ask') return <Suspense><AskPage key={place.token} token={place.token} /></Suspense>;
  return <NightList />;
}
