import type { ServerResponse } from 'node:http';
import type { FastifyReply } from 'fastify';

/** A reader who takes nothing for so long is gone, or will do better asking anew. */
const MOST_WAITING_BYTES = 64 * 1024;

/** One answer that stays open and is written to as there is something to say (server-sent events, WHATWG HTML 9.2). */
export class LiveStream {
  private readonly raw: ServerResponse;
  private isEnded = false;

  /** @param retryMilliseconds when a reader who was cut off comes back */
  constructor(reply: FastifyReply, retryMilliseconds: number) {
    this.raw = reply.raw;
    reply.hijack();
    this.raw.writeHead(200, {
      ...(reply.getHeaders() as Record<string, string>),
      'content-type': 'text/event-stream; charset=utf-8',
      'cache-control': 'no-store',
      // Else the connection stays open for a next request, and a server that stops waits for it.
      connection: 'close',
      // Or a proxy in between keeps the news until there are enough of them.
      'x-accel-buffering': 'no',
    });
    this.raw.write(`retry: ${retryMilliseconds}\n\n`);
  }

  tell(event: string, data: string | number): void {
    if (this.isEnded) return;
    this.raw.write(`event: ${event}\ndata: ${data}\n\n`);
    if (this.raw.writableLength > MOST_WAITING_BYTES) this.raw.destroy();
  }

  end(): void {
    if (this.isEnded) return;
    this.isEnded = true;
    this.raw.end();
  }

  /** Who went away before this was asked is told of at once: `close` comes only once. */
  onEnd(then: () => void): void {
    const ended = (): void => {
      this.isEnded = true;
      then();
    };
    if (this.raw.destroyed) ended();
    else this.raw.once('close', ended);
  }
}
