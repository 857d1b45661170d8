/** What the server tells while the stream lasts: new entries, something about requests, something about the night. */
export type Told = 'entries' | 'requests' | 'night';

const AGAIN_AFTER_MILLISECONDS = 15_000;

/** The server's stream of a night. It only says that there is something to read; when it fails, the log is asked for at intervals. */
export class LiveStream {
  private source: EventSource | null = null;
  private again: ReturnType<typeof setTimeout> | null = null;

  constructor(private readonly nightId: string, private readonly heard: (what: Told) => void) {}

  get isOpen(): boolean {
    return this.source?.readyState === EventSource.OPEN;
  }

  open(): void {
    if (this.source) return;
    const source = new EventSource(`/api/nights/${this.nightId}/live`);
    this.source = source;
    for (const what of ['entries', 'requests', 'night'] as const) {
      source.addEventListener(what, () => {
        this.heard(what);
        window.dispatchEvent(new CustomEvent(`table-${what}`));
      });
    }
    source.addEventListener('open', () => this.heard('entries'));
    source.addEventListener('error', () => {
      if (source.readyState !== EventSource.CLOSED) return;
      this.close();
      this.again = setTimeout(() => this.open(), AGAIN_AFTER_MILLISECONDS);
    });
  }

  close(): void {
    if (this.again !== null) clearTimeout(this.again);
    this.again = null;
    this.source?.close();
    this.source = null;
  }
}
