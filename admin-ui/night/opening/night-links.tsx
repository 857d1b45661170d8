import type { StoredNight } from '../store/nights.ts';

/** Nights that are stored on this device, each a way to its desk; no server is needed. */
export function NightLinks({ nights }: { nights: readonly StoredNight[] }) {
  return (
    <ul className="desk-nights">
      {nights.map((night) => (
        <li key={night.nightId}>
          <a className="desk-night" href={`#night/${night.nightId}`}>
            <strong>{night.bundle.title}</strong>
            <span className="desk-soft">{night.bundle.dayText}, {night.bundle.venueText}</span>
          </a>
        </li>
      ))}
    </ul>
  );
}
