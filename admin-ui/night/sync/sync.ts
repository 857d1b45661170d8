import { answered, batchToSend, retryDelayMilliseconds, signedInAgain } from '../../../server/domain/night/desk/outbox/outbox-sending.ts';
import { received } from '../../../server/domain/night/desk/outbox/outbox-reading.ts';
import type { Keeper } from '../store/keeper.ts';
import { withOffered } from '../store/nights.ts';
import { LiveStream } from './live-stream.ts';
import { ServerSaysNo, readBundle, readLog, sendBatch } from './server.ts';

/** Without a stream the log is asked for this often, with one only to be sure. */
const POLL_MILLISECONDS = 5000;
const POLL_BESIDE_STREAM_MILLISECONDS = 30_000;
const BUNDLE_EVERY_MILLISECONDS = 5 * 60_000;
/** A tab that lies in the background may be put to sleep while it holds the lock. */
const PATIENCE_WITH_OTHER_TAB_MILLISECONDS = 4000;

/**
 * Sends what waits and reads what others logged, in one tab of this browser at a time. It only believes answers: whether the
 * browser calls itself online is a reason to try at once and nothing more.
 */
export class Sync {
  private readonly stream: LiveStream;
  private isStopped = false;
  /** counts the turns taken and lost; the work of a turn that is over ends by itself */
  private turn = 0;
  private isTurn = false;
  private wakeUp: (() => void) | null = null;
  private mayRead = true;
  private readFailures = 0;
  private lastReadAt = 0;
  private lastBundleAt = Date.now();
  private givesUp = new AbortController();

  constructor(private readonly keeper: Keeper) {
    this.stream = new LiveStream(keeper.nightId, (what) => {
      if (what === 'night') this.lastBundleAt = 0;
      this.mayRead = true;
      this.wake();
    });
  }

  start(): void {
    window.addEventListener('online', this.tryNow);
    document.addEventListener('visibilitychange', this.seen);
    void this.takeTurns();
  }

  stop(): void {
    this.isStopped = true;
    window.removeEventListener('online', this.tryNow);
    document.removeEventListener('visibilitychange', this.seen);
    this.stream.close();
    this.givesUp.abort();
    this.wake();
  }

  private readonly wake = (): void => this.wakeUp?.();

  /** Something was logged. A server that does not answer is not asked at each tap. */
  readonly nudge = (): void => {
    if (this.keeper.outbox.failures === 0) this.wake();
  };

  readonly tryNow = (): void => {
    this.readFailures = 0;
    this.mayRead = true;
    void this.keeper.become((outbox) => (outbox.failures > 0 ? { ...outbox, failures: 0 } : outbox)).then(this.wake);
  };

  async signedIn(): Promise<void> {
    await this.keeper.become(signedInAgain);
    this.tryNow();
  }

  private readonly seen = (): void => {
    if (document.visibilityState !== 'visible') return;
    this.tryNow();
    if (!this.isTurn) setTimeout(() => void this.takeOver(), PATIENCE_WITH_OTHER_TAB_MILLISECONDS);
  };

  private get lockName(): string {
    return `rafterline-table ${this.keeper.nightId}`;
  }

  private async takeTurns(): Promise<void> {
    while (!this.isStopped) {
      if (!navigator.locks) {
        await this.work();
        return;
      }
      // Rejected when another tab takes over, and when this one stops.
      await navigator.locks.request(this.lockName, { signal: this.givesUp.signal }, () => this.work()).catch(() => {});
      this.turnIsOver();
    }
  }

  /** Only what is seen may take the turn from a tab that seems asleep. Sent twice is stored once, so nothing rests on the lock. */
  private async takeOver(): Promise<void> {
    if (this.isTurn || this.isStopped || document.visibilityState !== 'visible' || batchToSend(this.keeper.outbox) === null) return;
    await navigator.locks?.request(this.lockName, { steal: true }, () => this.work()).catch(() => {});
    this.turnIsOver();
  }

  private turnIsOver(): void {
    this.turn += 1;
    this.isTurn = false;
    this.wake();
  }

  private async work(): Promise<void> {
    const mine = (this.turn += 1);
    this.isTurn = true;
    this.stream.open();
    while (!this.isStopped && this.turn === mine) {
      await this.exchange();
      await this.rest();
    }
    if (this.isStopped || !this.isTurn) this.stream.close();
  }

  /** What cannot be stored, on a full device, is asked for and sent again after the pause of any other failure. */
  private async exchange(): Promise<void> {
    try {
      await this.send();
      await this.read();
      await this.lookForBundle();
    } catch {
      this.readFailures += 1;
    }
  }

  private async send(): Promise<void> {
    for (;;) {
      const batch = batchToSend(this.keeper.outbox);
      if (batch === null || this.isStopped) return;
      const answer = await sendBatch(this.keeper.nightId, batch);
      await this.keeper.become((outbox) => answered(outbox, batch, answer));
      this.keeper.connectionIs(answer.kind === 'silence' ? 'away' : 'connected');
      if (this.keeper.outbox.failures > 0) return;
    }
  }

  private async read(): Promise<void> {
    const every = this.stream.isOpen ? POLL_BESIDE_STREAM_MILLISECONDS : POLL_MILLISECONDS;
    const isDue = this.mayRead || this.readFailures > 0 || Date.now() - this.lastReadAt > every || Date.now() < this.lastReadAt;
    if (!isDue || this.isStopped || this.keeper.outbox.failures > 0) return;
    this.mayRead = false;
    this.lastReadAt = Date.now();
    try {
      const { entries, state, lastNumber = 0 } = await readLog(this.keeper.nightId, this.keeper.outbox.readUpTo);
      await this.keeper.become((outbox) => received(outbox, entries));
      if (entries.length > 0 && lastNumber > this.keeper.outbox.readUpTo) this.mayRead = true;
      const isSignedOff = state === 'signedOff';
      if (state && isSignedOff !== this.keeper.look().night.isSignedOff) await this.keeper.changeNight((night) => ({ ...night, isSignedOff }));
      if (this.keeper.outbox.waitsForSignIn) await this.keeper.become(signedInAgain);
      this.readFailures = 0;
      this.keeper.connectionIs('connected');
    } catch (failure) {
      this.readFailures += 1;
      const { status } = failure as ServerSaysNo;
      if (status === 401) await this.keeper.become((outbox) => ({ ...outbox, waitsForSignIn: true }));
      this.keeper.connectionIs(status === 0 ? 'away' : 'connected');
    }
  }

  private async lookForBundle(): Promise<void> {
    if (Date.now() - this.lastBundleAt < BUNDLE_EVERY_MILLISECONDS || this.isStopped || this.keeper.look().connection !== 'connected') return;
    this.lastBundleAt = Date.now();
    const offered = await readBundle(this.keeper.nightId).catch(() => null);
    if (offered) await this.keeper.changeNight(withOffered(offered));
  }

  /** Until something happens, the next try is due or it is time to ask again. */
  private async rest(): Promise<void> {
    const failures = Math.max(this.keeper.outbox.failures, this.readFailures);
    const isQueued = batchToSend(this.keeper.outbox) !== null;
    const longest = failures > 0 ? retryDelayMilliseconds(failures, Math.random()) : isQueued || this.mayRead ? 0 : POLL_MILLISECONDS;
    if (longest === 0 || this.isStopped) return;
    await new Promise<void>((done) => {
      const late = setTimeout(done, longest);
      this.wakeUp = () => {
        clearTimeout(late);
        done();
      };
    });
    this.wakeUp = null;
  }
}
