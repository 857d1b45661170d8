import type { DeskEntry } from '../../server/domain/night/desk/desk-entry.ts';
import { heldFile, entriesOfFile } from '../../server/domain/night/desk/outbox/held-file.ts';
import { emptyOutbox, nextSequence, outboxOf, written } from '../../server/domain/night/desk/outbox/outbox.ts';
import type { NumberedEntry, Outbox } from '../../server/domain/night/desk/outbox/outbox.ts';
import { received, takenOver } from '../../server/domain/night/desk/outbox/outbox-reading.ts';
import { answered, batchToSend, signedInAgain, triedAgain } from '../../server/domain/night/desk/outbox/outbox-sending.ts';
import type { Batch, BatchAnswer } from '../../server/domain/night/desk/outbox/outbox-sending.ts';

/** A server as devices see it: the model's, or the real one. */
export interface ServerSide {
  take(place: number, batch: Batch): Promise<BatchAnswer>;
  read(place: number, after: number): Promise<readonly NumberedEntry[] | null>;
  signOff(): Promise<void>;
  /** nobody on this device is let in any more, until they sign in again */
  shutOut(place: number): void;
  letIn(place: number): void;
}

/** What may happen next, with two numbers that choose among what is there. */
export type Step = readonly [what: number, which: number, more: number];

/** Something under way between a device and the server; it may be lost, doubled and overtaken. */
type UnderWay =
  | { readonly kind: 'batch'; readonly place: number; readonly batch: Batch }
  | { readonly kind: 'answer'; readonly place: number; readonly batch: Batch; readonly answer: BatchAnswer }
  | { readonly kind: 'lines'; readonly place: number; readonly entries: readonly NumberedEntry[] };

/** Common steps stand several times. */
const STEPS = [
  'read', 'read', 'read', 'note', 'takeBack', 'send', 'send', 'send', 'arrive', 'arrive', 'arrive', 'arrive', 'arrive', 'lose', 'double', 'ask', 'ask',
  'restart', 'shutOut', 'letIn', 'signOff', 'copyDevice', 'handOver', 'tryAgain',
] as const;

export interface Made {
  id(): string;
  gameId: string;
  deviceIds: readonly [string, string];
  read(claim: number): Partial<DeskEntry>;
}

/** Two devices at one table, and everything that can go wrong between them and the server. */
export class TwoDevices {
  readonly boxes: Outbox[];
  /** every entry that anybody tapped, by id */
  readonly tapped = new Map<string, DeskEntry>();
  private underWay: UnderWay[] = [];

  constructor(private readonly server: ServerSide, private readonly made: Made) {
    this.boxes = made.deviceIds.map(emptyOutbox);
  }

  async step([what, which, more]: Step): Promise<void> {
    const place = which % 2;
    switch (STEPS[what % STEPS.length]!) {
      case 'read': return this.tap(place, this.made.read(more % 3));
      case 'note': return this.tap(place, { kind: 'note', reason: `note ${more}` });
      case 'takeBack': return this.takeBack(place, more);
      case 'send': return this.send(place);
      case 'arrive': return this.arrive(more, true);
      case 'lose': return void this.take(more);
      case 'double': return this.arrive(more, false);
      case 'ask': return this.ask(place);
      case 'restart': return this.restart(place);
      case 'shutOut': return this.server.shutOut(place);
      case 'letIn': return this.signIn(place);
      case 'signOff': return more % 4 === 0 ? this.server.signOff() : undefined;
      case 'copyDevice': return more % 3 === 0 ? this.copyDevice(place) : undefined;
      case 'handOver': return this.handOver(place);
      case 'tryAgain': return this.change(place, triedAgain);
    }
  }

  /** The network is good again and everybody is let in: all that can arrive arrives. */
  async comeToRest(): Promise<void> {
    while (this.underWay.length > 0) await this.arrive(0, true);
    for (const place of [0, 1]) this.signIn(place);
    for (let round = 0, quiet = 0; round < 60 && quiet < 2; round += 1) {
      for (const place of [0, 1]) {
        await this.send(place);
        await this.ask(place);
      }
      while (this.underWay.length > 0) await this.arrive(0, true);
      // Once more after the last was sent, so that each has read what the other sent.
      quiet = this.boxes.every((box) => batchToSend(box) === null) ? quiet + 1 : 0;
    }
  }

  private change(place: number, rule: (box: Outbox) => Outbox): void {
    this.boxes[place] = rule(this.boxes[place]!);
  }

  private tap(place: number, said: Partial<DeskEntry>): void {
    const box = this.boxes[place]!;
    const entry: DeskEntry = {
      id: this.made.id(), deviceId: box.deviceId, sequence: nextSequence(box), kind: 'note', outcome: null, reason: null, gameId: null, cueKey: null, placementId: null,
      commitmentId: null, windowKey: null, teamId: null, playerNumber: null, period: null, clock: null, detail: null, happeningEntryId: null, takesBackEntryId: null,
      occurredAt: `20${10 + (this.tapped.size % 20)}-12-05T02:00:00.000Z`, ...said,
    };
    this.tapped.set(entry.id, entry);
    this.change(place, (now) => written(now, entry));
  }

  private takeBack(place: number, more: number): void {
    const box = this.boxes[place]!;
    const ids = [...box.kept.keys(), ...[...box.others.values()].map((entry) => entry.id)];
    if (ids.length > 0) this.tap(place, { kind: 'takenBack', takesBackEntryId: ids[more % ids.length]! });
  }

  private send(place: number): void {
    const batch = batchToSend(this.boxes[place]!);
    if (batch) this.underWay.push({ kind: 'batch', place, batch });
  }

  private async ask(place: number): Promise<void> {
    const entries = await this.server.read(place, this.boxes[place]!.readUpTo);
    if (entries) this.underWay.push({ kind: 'lines', place, entries });
  }

  private take(which: number): UnderWay | null {
    return this.underWay.splice(which % Math.max(1, this.underWay.length), 1)[0] ?? null;
  }

  /** @param isGone false where the same thing will arrive once more */
  private async arrive(which: number, isGone: boolean): Promise<void> {
    const one = isGone ? this.take(which) : (this.underWay[which % Math.max(1, this.underWay.length)] ?? null);
    if (one?.kind === 'batch') this.underWay.push({ ...one, kind: 'answer', answer: await this.server.take(one.place, one.batch) });
    if (one?.kind === 'answer') this.change(one.place, (box) => answered(box, one.batch, one.answer));
    if (one?.kind === 'lines') this.change(one.place, (box) => received(box, one.entries));
  }

  /** The tab is killed: what is in the store is all there is. */
  private restart(place: number): void {
    this.change(place, (box) => outboxOf(box.deviceId, [...box.kept.values()], [...box.others.values()]));
  }

  private signIn(place: number): void {
    this.server.letIn(place);
    this.change(place, signedInAgain);
  }

  /** A store copied by a backup: two devices then believe they are one, and take the same places. */
  private copyDevice(from: number): void {
    const source = this.boxes[from]!;
    const target = this.boxes[1 - from]!;
    // Only an empty device is set up from a backup; nothing may be written over.
    if (target.kept.size === 0) this.boxes[1 - from] = outboxOf(source.deviceId, [...source.kept.values()], [...source.others.values()]);
  }

  /** Saves what is not on the server and takes the file into the other device. */
  private handOver(from: number): void {
    const waiting = [...this.boxes[from]!.kept.values()].filter((one) => one.place !== 'onServer').map((one) => one.entry);
    const read = entriesOfFile(JSON.stringify(heldFile('friday', 'Friday', waiting)), 'friday');
    if ('sentence' in read) throw new Error(read.sentence);
    this.change(1 - from, (box) => takenOver(box, read.entries));
  }
}
