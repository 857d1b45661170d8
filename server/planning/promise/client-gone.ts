import type { FastifyReply } from 'fastify';

/** A signal that is given when whoever asked has gone away before the answer. */
export function untilGone(reply: FastifyReply): AbortSignal {
  const gone = new AbortController();
  reply.raw.once('close', () => {
    if (!reply.raw.writableEnded) gone.abort();
  });
  return gone.signal;
}
