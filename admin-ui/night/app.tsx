import { usePlace } from './address.ts';
import { NightList } from './opening/night-list.tsx';
import { OpenNight } from './opening/open-night.tsx';
import { StartByLink } from './opening/start-by-link.tsx';
import { StoredDesk } from './shell/stored-desk.tsx';

export function App() {
  const place = usePlace();
  if (place.at === 'open') return <OpenNight key={place.nightId} nightId={place.nightId} />;
  if (place.at === 'night') return <StoredDesk key={place.nightId} nightId={place.nightId} />;
  if (place.at === 'link') return <StartByLink key={place.token} token={place.token} />;
  return <NightList />;
}
