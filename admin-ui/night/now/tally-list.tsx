import { readEntry } from '../../../server/domain/night/desk/reading/read-entry.ts';
import type { CueStanding } from '../../../server/domain/night/desk/reading/reads-left.ts';
import type { Logging } from './logging.ts';
import type { Reading } from './reading.ts';
import { standingText } from './words.ts';

const MARKS = { open: '', read: '✓', cutShort: '½', notRead: '–' } as const;

function Tick({ standing, reading, logging }: { standing: CueStanding; reading: Reading; logging: Logging }) {
  const { cue, state } = standing;
  const isHeld = cue.isSponsored && !reading.mayReadSponsors;
  const name = cue.sponsorName ?? cue.title;
  return (
    <li>
      <button type="button" className="desk-button desk-now-tick" data-state={state} disabled={state === 'read' || isHeld} aria-label={`${cue.code}, ${name}: ${standingText(standing, reading.bundle) || 'log it read'}`} onClick={() => void logging.log(`tick ${cue.cueKey}`, `${cue.code}: read.`, readEntry(cue))}>
        <span className="desk-now-code">{cue.code}</span>
        <span className="desk-now-tick-name">{name}</span>
        <span className="desk-now-mark">{MARKS[state]}</span>
      </button>
    </li>
  );
}

/** For a spotter: every sponsor's read by its code, a tap each; the announcer reads from paper. */
export function TallyList({ reading, logging }: { reading: Reading; logging: Logging }) {
  const { bundle } = reading;
  return (
    <div className="desk-now-tally">
      {reading.windows.map(({ gameId, windowKey, title, cues }) => {
        const reads = cues.filter(({ cue }) => cue.isSponsored);
        if (reads.length === 0) return null;
        const game = bundle.games.length > 1 ? `${bundle.games.find((one) => one.gameId === gameId)?.level ?? ''}: ` : '';
        return (
          <section key={`${gameId} ${windowKey}`}>
            <h3>{game}{title}</h3>
            <ul>{reads.map((standing) => <Tick key={standing.cue.cueKey} standing={standing} reading={reading} logging={logging} />)}</ul>
          </section>
        );
      })}
    </div>
  );
}
