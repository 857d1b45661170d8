import { countsInWords } from '../../../server/domain/night/desk/outbox/outbox.ts';
import { HoldControl } from '../hold/hold-control.tsx';
import { keyName, useKey } from '../keys.ts';
import type { Keeper, Snapshot } from '../store/keeper.ts';
import type { Sync } from '../sync/sync.ts';
import type { SheetName } from './desk-sheets.tsx';
import { TakeBackLast } from './take-back-last.tsx';

interface Props {
  keeper: Keeper;
  sync: Sync;
  snapshot: Snapshot;
  onOpen: (sheet: SheetName) => void;
}

const BUTTONS = [['log', 'Log', 'l'], ['requests', 'Requests', 'q'], ['sign-off', 'Sign-off', 'o'], ['more', 'More', '?']] as const;

/** Title, state and the way to everything else. Its height never changes, whatever it has to say. */
export function DeskBar({ keeper, sync, snapshot, onOpen }: Props) {
  useKey('l', 'The log', () => onOpen('log'));
  useKey('q', 'Requests', () => onOpen('requests'));
  useKey('o', 'Sign-off', () => onOpen('sign-off'));
  useKey('?', 'More, and all keys', () => onOpen('more'));
  return (
    <header className="desk-bar">
      <h1 className="desk-title">{snapshot.night.bundle.title}</h1>
      <div className="desk-hold-place"><HoldControl /></div>
      <Counts snapshot={snapshot} onOpen={onOpen} />
      <div className="desk-bar-buttons">
        <TakeBackLast />
        {BUTTONS.map(([sheet, label, key]) => (
          <button key={sheet} type="button" className="desk-button desk-bar-button" onClick={() => onOpen(sheet)}>{label} <kbd>{keyName(key)}</kbd></button>
        ))}
      </div>
      <StatusLine keeper={keeper} sync={sync} snapshot={snapshot} onOpen={onOpen} />
    </header>
  );
}

function Counts({ snapshot: { counts }, onOpen }: Pick<Props, 'snapshot' | 'onOpen'>) {
  return (
    <button type="button" className="desk-counts" aria-label={`${countsInWords(counts)} Show what waits.`} onClick={() => onOpen('held')} data-care={counts.needsAttention > 0}>
      <span>On this device <b>{counts.onDevice}</b></span>
      <span>On the server <b>{counts.onServer}</b></span>
      <span>Needs attention <b>{counts.needsAttention}</b></span>
    </button>
  );
}

/** One line, always there: what the person should know of the connection, or what they can do about it. */
function StatusLine({ keeper, sync, snapshot, onOpen }: Props) {
  const { unstored, waitsForSignIn, connection, counts, night } = snapshot;
  if (unstored.length > 0) {
    return (
      <p className="desk-status desk-status-bad" role="alert">
        <span>{unstored.length === 1 ? '1 entry is not stored.' : `${unstored.length} entries are not stored.`} {unstored[0]!.sentence}</span>
        <button type="button" className="desk-link" onClick={() => void keeper.storeAgain().then(sync.nudge)}>Try again</button>
        <button type="button" className="desk-link" onClick={() => onOpen('held')}>Show</button>
      </p>
    );
  }
  return (
    <p className={`desk-status ${waitsForSignIn ? 'desk-status-care' : ''}`} role="status">
      <span>{words({ waitsForSignIn, connection, waiting: counts.onDevice })}</span>
      {waitsForSignIn && <button type="button" className="desk-link" onClick={() => onOpen('held')}>What to do</button>}
      {!waitsForSignIn && night.offeredBundle && <button type="button" className="desk-link" onClick={() => onOpen('more')}>The office has changed something</button>}
    </p>
  );
}

function words({ waitsForSignIn, connection, waiting }: { waitsForSignIn: boolean; connection: Snapshot['connection']; waiting: number }): string {
  if (waitsForSignIn) return 'The server asks who you are. Go on logging: everything stays on this device until you sign in again.';
  if (connection === 'connected') return waiting > 0 ? 'Connected, sending.' : 'Connected. Everything logged here is on the server.';
  if (connection === 'away') return 'No connection. Go on: everything you log is stored on this device and is sent later.';
  return 'Everything you log is stored on this device. Looking for the server…';
}
