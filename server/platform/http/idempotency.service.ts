import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../../domain/refusals.ts';
import { UnitOfWork } from '../database/unit-of-work.ts';
import { IdempotencyRecord } from './idempotency-record.entity.ts';

export interface Attempt {
  key: string | undefined;
  route: string;
  payloadDigest: string;
  status: number;
}

/**
 * Key and answer are stored in the unit of work that moves the money, so the two happen together.
 * A refusal stores nothing: the same key may be tried again once the reason is gone.
 *
 * @source draft-ietf-httpapi-idempotency-key-header (an Internet-Draft): 400 missing, 422 another payload, 409 still running
 */
@Injectable()
export class IdempotencyService {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async once(attempt: Attempt, handle: () => Promise<unknown>, replay: (status: number) => void): Promise<unknown> {
    const key = keyOf(attempt.key);
    const [lock] = await this.work.sql<{ taken: boolean }>(
      `select pg_try_advisory_xact_lock(hashtextextended($1::uuid::text || $2, 11)) as taken`,
      [key],
    );
    if (!lock?.taken) refuse('still-running');
    const earlier = await this.work.first(IdempotencyRecord, { key });
    if (earlier) {
      const same =
        earlier.route === attempt.route &&
        earlier.payloadDigest === attempt.payloadDigest &&
        earlier.personId === this.work.scope.personId;
      if (!same) refuse('idempotency-key-used');
      replay(earlier.status);
      return earlier.body;
    }
    const body = await handle();
    await this.work.insert(IdempotencyRecord, {
      key,
      personId: this.work.scope.personId,
      route: attempt.route,
      payloadDigest: attempt.payloadDigest,
      status: attempt.status,
      body: (body ?? null) as never,
    });
    return body;
  }
}

/** The key as the draft writes it, `"8e03…"` in quotes, or bare; 16 to 128 signs without spaces. */
function keyOf(header: string | undefined): string {
  if (!header) return refuse('idempotency-key-missing');
  const key = header.replace(/^"(.*)"$/, '$1');
  return /^[\w-]{16,128}$/.test(key) ? key : refuse('idempotency-key-missing');
}
