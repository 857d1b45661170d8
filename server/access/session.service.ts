import { createHash, randomBytes } from 'node:crypto';
import { Inject, Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { Role } from '../domain/access/rights.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import type { Visitor } from './visitor.ts';

export function hashOf(secret: string): string {
  return createHash('sha256').update(secret).digest('hex');
}

/** Sessions are random tokens, kept as hashes: idle 30 minutes, at most 12 hours, gone at once when revoked. */
@Injectable()
export class SessionService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DataSource) private readonly source: DataSource,
  ) {}

  /** Who a token stands for, in one statement of its own; null when it stands for nobody (any more). */
  async visitorOf(token: string): Promise<Visitor | null> {
    const tokenHash = hashOf(token);
    const [row]: { person_id: string; department_id: string; roles: Role[] }[] = await this.source.query(
      'select person_id, department_id, roles from session_of($1)',
      [tokenHash],
    );
    return row ? { personId: row.person_id, departmentId: row.department_id, roles: row.roles, tokenHash } : null;
  }

  /** Opens a session in the unit of work that signs in. Answers the token, which is kept nowhere. */
  async open(personId: string, departmentId: string): Promise<string> {
    const token = randomBytes(32).toString('base64url');
    await this.work.sqlEverywhere(
      `insert into session (token_hash, person_id, department_id, expires_at) values ($1, $2, $3, now() + interval '12 hours')`,
      [hashOf(token), personId, departmentId],
    );
    return token;
  }

  async close(tokenHash: string): Promise<void> {
    await this.work.sqlEverywhere('update session set revoked_at = now() where token_hash = $1 and revoked_at is null', [tokenHash]);
  }

  async closeAllOf(personId: string): Promise<void> {
    await this.work.sqlEverywhere('update session set revoked_at = now() where person_id = $1 and revoked_at is null', [personId]);
  }
}
