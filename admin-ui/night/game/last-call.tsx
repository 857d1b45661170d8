import { callLine } from '../../../server/domain/night/desk/sheet/call-line.ts';
import type { CallLine } from '../../../server/domain/night/desk/sheet/call-line.ts';
import { standing } from '../../../server/domain/night/take-back.ts';
import { useDesk } from '../desk.ts';
import type { Table } from './use-table.ts';

function lastCall({ sheet, visitors, home, game }: Table, lines: ReturnType<typeof useDesk>['lines'], foulCountsRead: boolean): CallLine | null {
  if (sheet === null) return null;
  const stands = standing(lines);
  for (let place = stands.length - 1; place >= 0; place -= 1) {
    const line = stands[place]!;
    const call = line.gameId === game.gameId ? callLine(sheet, line, { visitors, home, foulCountsRead }) : null;
    if (call) return call;
  }
  return null;
}

/** The announcement of the last entry, large; below it what only the table reads. Its height never changes. */
export function LastCall({ table }: { table: Table }) {
  const { lines, bundle, takeBack, isSignedOff } = useDesk();
  const call = lastCall(table, lines, bundle.settings.foulCountsRead);
  return (
    <div className="desk-call">
      <div className="desk-call-words" role="status" tabIndex={0}>
        <p className="desk-call-text">{call === null ? 'The announcement of each entry stands here.' : call.text === '' ? 'Nothing to announce.' : call.text}</p>
        <p className="desk-call-say">{call?.sayAs ? `Say: ${call.sayAs}` : ''}</p>
        <p className="desk-call-note">{call?.note ? `For the table, do not read: ${call.note}` : ''}</p>
      </div>
      <button type="button" className="desk-button" disabled={call === null || isSignedOff} onClick={() => call && void takeBack(call.entryId).catch(() => undefined)}>Take back</button>
    </div>
  );
}
