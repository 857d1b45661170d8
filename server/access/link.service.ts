import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';
import { Inject, Injectable } from '@nestjs/common';
import { linkStateAt } from '../domain/access/link-rights.ts';
import type { LinkKind } from '../domain/access/link-rights.ts';
import { instantOf } from '../domain/instant.ts';
import type { Instant } from '../domain/instant.ts';
import { refuse } from '../domain/refusals.ts';
import { NOWHERE } from '../platform/database/scope.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Link } from './link.entity.ts';
import type { LinkDto, LinkView, NewLinkView } from './link.dto.ts';
import { hashOf } from './session.service.ts';
import { SignInAttempts } from './sign-in-attempts.service.ts';
import type { LinkVisitor } from './visitor.ts';

const SELECT = `select link.id, link.kind, link.subject_id as "subjectId", link.label, link.not_before_at as "notBeforeAt", link.expires_at as "expiresAt",
    link.revoked_at as "revokedAt", link.made_at as "madeAt", person.name as "madeByName"
  from link left join person on person.id = link.made_by_person_id where link.department_id = $1`;

interface Found {
  id: string;
  department_id: string;
  kind: LinkKind;
  subject_id: string;
  pin_hash: string | null;
  expires_at: string;
}

/** Links let somebody in without a sign-in, to one subject and for a time: one sponsor's page, one night's table. */
@Injectable()
export class LinkService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(SignInAttempts) private readonly attempts: SignInAttempts,
  ) {}

  /** Whoever calls has looked that the subject is the department's own. Answers the token, which is kept nowhere. */
  async make(kind: LinkKind, subjectId: string, form: LinkDto): Promise<NewLinkView> {
    const now = new Date().toISOString() as Instant;
    const notBeforeAt = form.notBeforeAt ? instantOf(form.notBeforeAt) : now;
    const expiresAt = instantOf(form.expiresAt);
    if (expiresAt <= notBeforeAt || expiresAt <= now) refuse('link-ends-before-it-starts', {}, { expiresAt: 'is later than now and than its start' });
    const token = randomBytes(32).toString('base64url');
    const { label } = form;
    const more = { madeByPersonId: this.work.personId, madeAt: now, pinHash: null, revokedAt: null };
    const [link] = await this.work.insert(Link, { kind, subjectId, label, notBeforeAt, expiresAt, tokenHash: hashOf(token), ...more });
    const view = (await this.of(kind, subjectId)).find((one) => one.id === link!.id) ?? refuse('not-found');
    return { ...view, token };
  }

  /** Every link ever given out for a subject, the newest first. */
  async of(kind: LinkKind, subjectId: string): Promise<LinkView[]> {
    const now = new Date().toISOString() as Instant;
    const rows = await this.work.sql<Omit<LinkView, 'state'> & Parameters<typeof linkStateAt>[0]>(`${SELECT} and link.kind = $2 and link.subject_id = $3 order by link.id desc`, [kind, subjectId]);
    return rows.map((row) => ({ ...row, state: linkStateAt(row, now) }));
  }

  /** From now on it opens nothing, also for who is inside already. */
  async revoke(kind: LinkKind, subjectId: string, id: string): Promise<LinkView> {
    const link = await this.work.one(Link, id);
    if (link.kind !== kind || link.subjectId !== subjectId) refuse('not-found');
    if (link.revokedAt !== null) refuse('link-already-revoked');
    await this.work.update(Link, id, link.version, { revokedAt: new Date().toISOString() });
    return (await this.of(kind, subjectId)).find((one) => one.id === id) ?? refuse('not-found');
  }

  /**
   * The click on Start: answers what the cookie holds from now on. Guesses from one address are slowed down like wrong passwords.
   *
   * @throws Refused `link-not-good`, the same for a link that never was, is revoked, has ended or has not begun, and for a wrong PIN
   */
  async start(token: string, pin: string | null, address: string): Promise<{ cookie: string; kind: LinkKind; expiresAt: string }> {
    const whoHash = hashOf(`link from ${address}`);
    await this.work.runAs(NOWHERE, () => this.attempts.refuseWhileDelayed(whoHash, whoHash));
    const found = await this.find(token);
    const isGood = found !== null && (found.pin_hash === null || (pin !== null && same(pinHashOf(pin, token), found.pin_hash)));
    await this.work.runAs(NOWHERE, () => this.attempts.record(whoHash, whoHash, isGood));
    if (!isGood) return refuse('link-not-good');
    return { cookie: cookieOf(token, found.pin_hash), kind: found.kind, expiresAt: found.expires_at };
  }

  /** Whose link a cookie carries; null where it opens nothing (any more). */
  async visitorOf(cookie: string): Promise<LinkVisitor | null> {
    const token = cookie.split('.')[0]!;
    const found = await this.find(token);
    if (!found || !same(cookie, cookieOf(token, found.pin_hash))) return null;
    return { linkId: found.id, departmentId: found.department_id, kind: found.kind, subjectId: found.subject_id };
  }

  private async find(token: string): Promise<Found | null> {
    const [row] = await this.work.runAs(NOWHERE, () => this.work.sqlEverywhere<Found>('select id, department_id, kind, subject_id, pin_hash, expires_at from link_of($1)', [hashOf(token)]));
    return row ?? null;
  }
}

/** The hash of a PIN is worth nothing without the token. */
export function pinHashOf(pin: string, token: string): string {
  return hashOf(`${token} ${pin}`);
}

/** The token, and behind it the proof that the PIN of the link was known: a new PIN ends it. */
function cookieOf(token: string, pinHash: string | null): string {
  return pinHash === null ? token : `${token}.${hashOf(`${token} opened ${pinHash}`)}`;
}

function same(one: string, other: string): boolean {
  const [left, right] = [one, other].map((text) => createHash('sha256').update(text).digest());
  return timingSafeEqual(left!, right!);
}
