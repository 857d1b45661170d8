import { request } from 'node:http';
import type { ClientRequest, IncomingMessage } from 'node:http';
import type { Visitor } from './visitor.ts';

export interface News {
  event: string;
  data: string;
}

/** Reads a stream of news as a page does. */
export class NewsReader {
  readonly heard: News[] = [];
  private readonly waiting: (() => void)[] = [];
  private isOver = false;

  private constructor(
    private readonly sent: ClientRequest,
    readonly answer: IncomingMessage,
  ) {
    let text = '';
    answer.setEncoding('utf8').on('data', (part: string) => {
      text += part;
      const blocks = text.split('\n\n');
      text = blocks.pop()!;
      for (const block of blocks) this.take(block);
    });
    for (const end of ['end', 'error', 'close']) answer.on(end, () => this.over());
  }

  static async open(visitor: Visitor, path: string): Promise<NewsReader> {
    return new Promise((done, fail) => {
      const sent = request(visitor.baseUrl + path, { agent: false, headers: { cookie: visitor.cookie, accept: 'text/event-stream' } }, (answer) => done(new NewsReader(sent, answer)));
      sent.on('error', fail).end();
    });
  }

  /** Waits until the stream has told this, and answers all that was told until then. */
  async until(event: string, data?: string | number): Promise<News[]> {
    const isThere = () => this.heard.some((one) => one.event === event && (data === undefined || one.data === String(data)));
    while (!isThere()) {
      if (this.isOver) throw new Error(`the stream ended before ${event} ${data ?? ''}: ${JSON.stringify(this.heard)}`);
      await this.next();
    }
    return this.heard;
  }

  async ended(): Promise<void> {
    while (!this.isOver) await this.next();
  }

  close(): void {
    this.sent.destroy();
  }

  private async next(): Promise<void> {
    return new Promise((done) => this.waiting.push(done));
  }

  private take(block: string): void {
    const field = (name: string) => new RegExp(`^${name}: (.*)$`, 'm').exec(block)?.[1] ?? '';
    if (field('event')) this.heard.push({ event: field('event'), data: field('data') });
    this.wake();
  }

  private over(): void {
    this.isOver = true;
    this.wake();
  }

  private wake(): void {
    for (const done of this.waiting.splice(0)) done();
  }
}
