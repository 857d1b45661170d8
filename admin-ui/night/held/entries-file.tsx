import { useState } from 'react';
import type { DeskLine } from '../../../server/domain/night/desk/desk-entry.ts';
import { entriesOfFile, heldFile } from '../../../server/domain/night/desk/outbox/held-file.ts';
import { takenOver } from '../../../server/domain/night/desk/outbox/outbox-reading.ts';
import type { Keeper } from '../store/keeper.ts';
import type { StoredNight } from '../store/nights.ts';
import type { Sync } from '../sync/sync.ts';

interface Props {
  keeper: Keeper;
  sync: Sync;
  night: StoredNight;
  lines: readonly DeskLine[];
}

/** Another way out of this device, and into one: what is not on the server, as a file. */
export function EntriesFile({ keeper, sync, night, lines }: Props) {
  const [answer, setAnswer] = useState<string | null>(null);
  const waiting = lines.filter((line) => line.place !== 'onServer');
  const take = async (file: File | undefined) => {
    if (!file) return;
    const read = entriesOfFile(await file.text(), night.nightId);
    if ('sentence' in read) return setAnswer(read.sentence);
    const before = keeper.outbox.kept.size;
    await keeper.become((outbox) => takenOver(outbox, read.entries));
    sync.nudge();
    const fresh = keeper.outbox.kept.size - before;
    setAnswer(fresh === 0 ? 'Every entry of this file was here already.' : `${fresh === 1 ? '1 entry is' : `${fresh} entries are`} taken over, and sent from this device.`);
  };
  return (
    <>
      <h3>As a file</h3>
      <p>A device that finds no network for long can hand its entries on: save them here, and take the file into another device or give it to the director. Taken twice, an entry still counts once.</p>
      <button type="button" className="desk-button" disabled={waiting.length === 0} onClick={() => save(night, keeper, waiting)}>Save what is not on the server</button>
      <label className="desk-file">
        Take over a file of entries
        <input type="file" accept="application/json,.json" onChange={(event) => {
          void take(event.target.files?.[0]).catch(() => setAnswer('This file could not be stored. Nothing was taken from it.'));
          event.target.value = '';
        }} />
      </label>
      <p role="status">{answer}</p>
    </>
  );
}

function save(night: StoredNight, keeper: Keeper, waiting: readonly DeskLine[]): void {
  const entries = waiting.flatMap((line) => keeper.outbox.kept.get(line.id)?.entry ?? []);
  const text = JSON.stringify(heldFile(night.nightId, night.bundle.title, entries), null, 1);
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = `table-entries-${night.bundle.heldOn}.json`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
