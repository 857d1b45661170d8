import { useCurrentCue } from './current-cue.ts';
import type { Reading } from './reading.ts';
import type { RequestCue } from './request-cues.ts';

/** Requests that were approved wait here until somebody takes one up; none pushes itself in front. On a laptop its place is kept free, so an arriving one moves nothing. */
export function RequestsToRead({ reading, requests }: { reading: Reading; requests: readonly RequestCue[] }) {
  const { cueKey, jump } = useCurrentCue(reading);
  const open = requests.filter(({ isOpen }) => isOpen);
  return (
    <section className="desk-now-requests" data-empty={open.length === 0} aria-label="Requests to read">
      <h3>Requests to read: {open.length}</h3>
      <div className="desk-now-row">
        {open.map(({ cue }) => <button key={cue.cueKey} type="button" className="desk-button" aria-pressed={cue.cueKey === cueKey} onClick={() => jump(cue.cueKey)}>{cue.code} {cue.title}</button>)}
      </div>
    </section>
  );
}
