import type { DeskEntry, DeskLine, EntryPlace, NewDeskEntry } from '../../../server/domain/night/desk/desk-entry.ts';
import { countsOf, linesOf, readUpTo, withKept, written } from '../../../server/domain/night/desk/outbox/outbox.ts';
import type { KeptEntry, NumberedEntry, Outbox } from '../../../server/domain/night/desk/outbox/outbox.ts';
import { deviceId } from './database.ts';
import { storeEntry, storeLastSequence, storeOthers, storePlaces, readOutbox } from './entries.ts';
import { changeNight, storedNight } from './nights.ts';
import type { StoredNight } from './nights.ts';

/** An entry that was said and could not be stored: it stays on the screen until it is. */
export interface Unstored {
  readonly said: NewDeskEntry;
  readonly sentence: string;
}

export type Connection = 'trying' | 'connected' | 'away';

/** What the screen shows at one moment. */
export interface Snapshot {
  readonly night: StoredNight;
  readonly lines: readonly DeskLine[];
  readonly counts: Readonly<Record<EntryPlace, number>>;
  readonly unstored: readonly Unstored[];
  readonly connection: Connection;
  readonly waitsForSignIn: boolean;
}

/** What one tab tells the others of this browser. */
interface Told {
  nightId: string;
  kept?: readonly KeptEntry[];
  others?: readonly NumberedEntry[];
  night?: StoredNight;
}

/**
 * One night's log on this device: in memory for the screen, in the store for good. The store is written first; the screen, the
 * sender and the other tabs hear of it afterwards.
 */
export class Keeper {
  private snapshot: Snapshot;
  private readonly watchers = new Set<() => void>();
  private readonly channel: BroadcastChannel;
  private unstored: readonly Unstored[] = [];
  private connection: Connection = 'trying';

  private constructor(private night: StoredNight, private box: Outbox) {
    this.snapshot = this.lookNow();
    this.channel = new BroadcastChannel('rafterline-table');
    this.channel.addEventListener('message', (message: MessageEvent<Told>) => this.hear(message.data));
  }

  static async open(nightId: string): Promise<Keeper | null> {
    const night = await storedNight(nightId);
    if (!night) return null;
    return new Keeper(night, await readOutbox(nightId, await deviceId()));
  }

  get outbox(): Outbox {
    return this.box;
  }

  get nightId(): string {
    return this.night.nightId;
  }

  readonly look = (): Snapshot => this.snapshot;

  readonly watch = (watcher: () => void): (() => void) => {
    this.watchers.add(watcher);
    return () => void this.watchers.delete(watcher);
  };

  /** @throws NotStored; the entry then is among the unstored */
  readonly write = async (said: NewDeskEntry): Promise<DeskEntry> => {
    try {
      const entry = await storeEntry(this.nightId, this.box.deviceId, said);
      this.box = written(this.box, entry);
      this.tell({ kept: [this.box.kept.get(entry.id)!] });
      return entry;
    } catch (failure) {
      this.unstored = [...this.unstored, { said, sentence: (failure as Error).message }];
      this.tell();
      throw failure;
    }
  };

  readonly takeBack = async (entryId: string): Promise<void> => {
    // One that waits to be stored is not said a second time.
    if (this.unstored.some(({ said }) => said.takesBackEntryId === entryId)) return;
    await this.write({ kind: 'takenBack', takesBackEntryId: entryId });
  };

  /** The unstored entries once more, in the order in which they were said. */
  readonly storeAgain = async (): Promise<void> => {
    const waiting = this.unstored;
    this.unstored = [];
    for (const { said } of waiting) await this.write(said).catch(() => {});
    this.tell();
  };

  /** Takes over what sending or reading has come to, first in the store. */
  async become(rule: (outbox: Outbox) => Outbox): Promise<void> {
    const next = rule(this.box);
    if (next === this.box) return;
    const kept = [...next.kept.values()].filter((one) => this.box.kept.get(one.entry.id) !== one);
    const others = next.others === this.box.others ? [] : [...next.others.values()].filter((entry) => !this.box.others.has(entry.number));
    const taken = kept.filter(({ entry }) => entry.deviceId === next.deviceId && !this.box.kept.has(entry.id));
    await storePlaces(this.nightId, kept);
    await storeOthers(this.nightId, others);
    if (taken.length > 0) await storeLastSequence(this.nightId, Math.max(...taken.map(({ entry }) => entry.sequence)));
    // A tap may have come in between: what changed is laid over what is there now.
    this.lay(kept, others);
    this.box = { ...this.box, waitsForSignIn: next.waitsForSignIn, failures: next.failures, batchSize: next.batchSize };
    this.tell(kept.length + others.length > 0 ? { kept, others } : {});
  }

  async changeNight(change: (night: StoredNight) => StoredNight): Promise<void> {
    const night = await changeNight(this.nightId, change);
    if (!night) return;
    this.night = night;
    this.tell({ night });
  }

  connectionIs(connection: Connection): void {
    if (connection === this.connection) return;
    this.connection = connection;
    this.tell();
  }

  close(): void {
    this.channel.close();
    this.watchers.clear();
  }

  private hear(told: Told): void {
    if (told.nightId !== this.nightId) return;
    if (told.night) this.night = told.night;
    this.lay(told.kept ?? [], told.others ?? []);
    this.show();
  }

  private lay(kept: readonly KeptEntry[], others: readonly NumberedEntry[]): void {
    const newer = kept.filter(({ entry }) => {
      const here = this.box.kept.get(entry.id);
      return !(here?.place === 'onServer' && here.number !== null);
    });
    let next = withKept(this.box, newer);
    if (others.length > 0) next = { ...next, others: new Map([...next.others, ...others.map((entry) => [entry.number, entry] as const)]) };
    this.box = { ...next, readUpTo: readUpTo(next) };
  }

  private tell(told?: Omit<Told, 'nightId'>): void {
    if (told && Object.keys(told).length > 0) this.channel.postMessage({ nightId: this.nightId, ...told } satisfies Told);
    this.show();
  }

  private show(): void {
    this.snapshot = this.lookNow();
    for (const watcher of this.watchers) watcher();
  }

  private linesFrom: Outbox | null = null;
  private lines: readonly DeskLine[] = [];

  private lookNow(): Snapshot {
    if (this.linesFrom?.kept !== this.box.kept || this.linesFrom.others !== this.box.others) this.lines = linesOf(this.box);
    this.linesFrom = this.box;
    return {
      night: this.night, lines: this.lines, counts: countsOf(this.box), unstored: this.unstored, connection: this.connection, waitsForSignIn: this.box.waitsForSignIn,
    };
  }
}
