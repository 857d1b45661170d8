import { Inject, Injectable } from '@nestjs/common';
import { signInDelaySeconds } from '../domain/access/sign-in-delay.ts';
import { refuse } from '../domain/refusals.ts';
import { newId } from '../platform/database/ids.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';

/** Wrong tries from one address in a quarter of an hour before everybody there waits: a whole school may share one address. */
const ADDRESS_LIMIT = 60;

/** Slows down whoever guesses: at passwords, and at links. Known before a department is, so it stands beside them all. */
@Injectable()
export class SignInAttempts {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /** Nobody else tries the same until the unit ends. Who does is not kept waiting, or a burst of guesses would hold every connection. */
  async refuseUnlessAlone(whoHash: string): Promise<void> {
    const [row] = await this.work.sqlEverywhere<{ isAlone: boolean }>('select pg_try_advisory_xact_lock(hashtextextended($1, 12)) as "isAlone"', [whoHash]);
    if (!row!.isAlone) refuse('sign-in-delayed', { waitSentence: '1 second', retryAfterSeconds: 1 });
  }

  /** @throws Refused `sign-in-delayed`, whether the next try would be right or not */
  async refuseWhileDelayed(whoHash: string, addressHash: string): Promise<void> {
    const [row] = await this.work.sqlEverywhere<{ failures: number; since: number | null; address_failures: number }>(
      `select count(*)::int as failures, extract(epoch from now() - max(attempted_at))::float8 as since,
              (select count(*)::int from sign_in_attempt where address_hash = $2 and not succeeded and attempted_at > now() - interval '15 minutes') as address_failures
         from sign_in_attempt where email_hash = $1 and not succeeded
          and attempted_at > coalesce((select max(attempted_at) from sign_in_attempt where email_hash = $1 and succeeded), '-infinity')
          and attempted_at > now() - interval '1 day'`,
      [whoHash, addressHash],
    );
    if (!row) return;
    const wait = Math.ceil(signInDelaySeconds(row.failures) - (row.since ?? Number.POSITIVE_INFINITY));
    const seconds = row.address_failures >= ADDRESS_LIMIT ? Math.max(wait, 60) : wait;
    if (seconds > 0) {
      const waitSentence = seconds < 90 ? `${seconds} second${seconds === 1 ? '' : 's'}` : `${Math.ceil(seconds / 60)} minutes`;
      refuse('sign-in-delayed', { waitSentence, retryAfterSeconds: seconds });
    }
  }

  async record(whoHash: string, addressHash: string, succeeded: boolean): Promise<void> {
    await this.work.sqlEverywhere('insert into sign_in_attempt (id, email_hash, address_hash, succeeded) values ($1, $2, $3, $4)', [
      newId(),
      whoHash,
      addressHash,
      succeeded,
    ]);
    await this.work.sqlEverywhere(`delete from sign_in_attempt where attempted_at < now() - interval '2 days'`);
  }
}
