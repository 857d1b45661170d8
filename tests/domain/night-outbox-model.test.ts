import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Instant } from '../../server/domain/instant.ts';
import type { DeskEntry } from '../../server/domain/night/desk/desk-entry.ts';
import { linesOf } from '../../server/domain/night/desk/outbox/outbox.ts';
import type { NumberedEntry } from '../../server/domain/night/desk/outbox/outbox.ts';
import type { Batch, BatchAnswer, EntryAnswer } from '../../server/domain/night/desk/outbox/outbox-sending.ts';
import { whyNotEntry } from '../../server/domain/night/log-entry.ts';
import type { LogEntry } from '../../server/domain/night/log-entry.ts';
import { claimOf, countNight } from '../../server/domain/night/reads-to-count.ts';
import { takenBackIds, whyNotTakeBack } from '../../server/domain/night/take-back.ts';
import { TwoDevices } from './night-outbox-world.ts';
import type { Made, ServerSide, Step } from './night-outbox-world.ts';

const SEED = 20261204;
const RUNS = 10_000;

const asLogged = (entry: NumberedEntry): LogEntry => ({ ...entry, nightId: 'friday', occurrence: null, playerId: null, occurredAt: entry.occurredAt as Instant });

/** What the server does with a batch, as its rule says it, in a few lines. */
class ModelServer implements ServerSide {
  log: NumberedEntry[] = [];
  readonly aside: DeskEntry[] = [];
  isSignedOff = false;
  private readonly shut = new Set<number>();

  async take(place: number, batch: Batch): Promise<BatchAnswer> {
    if (this.shut.has(place)) return { kind: 'refused', status: 401, sentence: 'Sign in first.' };
    return { kind: 'results', results: batch.entries.map((entry) => this.sort(entry)) };
  }

  private sort(entry: DeskEntry): EntryAnswer {
    const known = this.log.find((one) => one.id === entry.id);
    if (known && isSame(known, entry)) return { id: entry.id, status: 'already', number: known.number };
    if (known || this.log.some((one) => one.deviceId === entry.deviceId && one.sequence === entry.sequence)) {
      this.aside.push(entry);
      return { id: entry.id, status: 'aside', sentence: 'Another entry has this place.' };
    }
    const taken = entry.takesBackEntryId;
    const backs = entry.kind === 'takenBack' && whyNotTakeBack(this.log.map(asLogged).find(({ id }) => id === taken), 'friday', takenBackIds(this.log).has(taken!)) !== null;
    if (this.isSignedOff || backs || whyNotEntry(asLogged({ ...entry, number: 0 }))) return { id: entry.id, status: 'refused', sentence: 'Not like this.' };
    const number = this.log.length + 1;
    this.log.push({ ...entry, number });
    return { id: entry.id, status: 'stored', number };
  }

  async read(place: number, after: number): Promise<readonly NumberedEntry[] | null> {
    return this.shut.has(place) ? null : this.log.filter((entry) => entry.number > after);
  }

  async signOff(): Promise<void> {
    this.isSignedOff = true;
  }

  shutOut(place: number): void {
    this.shut.add(place);
  }

  letIn(place: number): void {
    this.shut.delete(place);
  }
}

function isSame(there: NumberedEntry, entry: DeskEntry): boolean {
  const { number: _, ...content } = there;
  return JSON.stringify(content) === JSON.stringify({ ...entry });
}

function making(): Made {
  let made = 0;
  const id = () => `0193a000-0000-7000-8000-${String((made += 1)).padStart(12, '0')}`;
  return { id, gameId: 'varsity', deviceIds: [id(), id()], read: (claim) => ({ kind: 'read', outcome: 'given', gameId: 'varsity', cueKey: `cue ${claim}`, commitmentId: 'gameBall' }) };
}

/** I1: what a device says is on the server is there exactly once, as it was tapped; nothing is there that nobody tapped. */
function nothingIsLostOrInvented(world: TwoDevices, server: ModelServer): void {
  const ids = server.log.map((entry) => entry.id);
  if (new Set(ids).size !== ids.length) throw new Error('an entry is in the log twice');
  const byId = new Map(server.log.map((entry) => [entry.id, entry]));
  for (const entry of server.log) if (!isSame(entry, world.tapped.get(entry.id)!)) throw new Error(`${entry.id} is in the log as nobody tapped it`);
  for (const box of world.boxes) {
    for (const { entry, place, number } of box.kept.values()) {
      const there = byId.get(entry.id);
      if (place === 'onServer' && (!there || there.number !== number || !isSame(there, entry))) throw new Error(`${entry.id} is said to be on the server and is not`);
    }
  }
  for (const id of world.tapped.keys()) if (!world.boxes.some((box) => box.kept.has(id))) throw new Error(`${id} was tapped and is on no device`);
}

/** I6, the part of the reads: a read counts at most once, however many logged it. */
function aReadCountsOnce(server: ModelServer): void {
  const counted = countNight(server.log.map(asLogged)).reads.filter((read) => read.outcome === 'counts').map(claimOf);
  if (new Set(counted).size !== counted.length) throw new Error('a read counts twice');
}

function atRest(world: TwoDevices, server: ModelServer): void {
  const log = server.log.map((entry) => entry.id);
  for (const box of world.boxes) {
    for (const { entry, place, sentence } of box.kept.values()) {
      if (place === 'onDevice') throw new Error(`${entry.id} still waits`);
      if (place === 'needsAttention' && !sentence) throw new Error(`${entry.id} is held without a word`);
      if (place === 'needsAttention' && log.includes(entry.id)) throw new Error(`${entry.id} is held although it is on the server`);
    }
    const seen = linesOf(box).filter((line) => line.number !== null);
    if (JSON.stringify(seen.map((line) => line.id)) !== JSON.stringify(log)) throw new Error('a device does not show the log as it is');
  }
}

const steps = fc.array(fc.tuple(fc.nat(1000), fc.nat(1), fc.nat(50)) as fc.Arbitrary<Step>, { minLength: 4, maxLength: 40, size: 'max' });

test(`an entry is kept exactly once and a read counts once, whatever happens between two devices and the server (${RUNS} schedules, seed ${SEED})`, { timeout: 120_000 }, async () => {
  const seen = { entries: 0, aside: 0, held: 0, doubles: 0, signedOff: 0 };
  await fc.assert(
    fc.asyncProperty(steps, async (schedule) => {
      const server = new ModelServer();
      const world = new TwoDevices(server, making());
      for (const step of schedule) {
        await world.step(step);
        nothingIsLostOrInvented(world, server);
      }
      await world.comeToRest();
      nothingIsLostOrInvented(world, server);
      aReadCountsOnce(server);
      atRest(world, server);
      seen.entries += server.log.length;
      seen.aside += Math.min(1, server.aside.length);
      seen.held += world.boxes.some((box) => [...box.kept.values()].some((one) => one.place === 'needsAttention')) ? 1 : 0;
      seen.doubles += countNight(server.log.map(asLogged)).reads.some((read) => read.outcome === 'double') ? 1 : 0;
      seen.signedOff += server.isSignedOff ? 1 : 0;
    }),
    { seed: SEED, numRuns: RUNS },
  );
  // Schedules that never meet a hard case would prove nothing.
  expect(Math.min(...Object.values(seen)), JSON.stringify(seen)).toBeGreaterThan(100);
});
