import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';
import { Inject, Injectable } from '@nestjs/common';
import { linkStateAt, mayUseByLink } from '../domain/access/link-rights.ts';
import type { LinkKind, LinkRight } from '../domain/access/link-rights.ts';
import { mayUse } from '../domain/access/rights.ts';
import type { Role } from '../domain/access/rights.ts';
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
    link.revoked_at as "revokedAt", link.made_at as "madeAt", maker.name as "madeByName",
    link.may_sign_off as "maySignOff", worker.name as "personName"
  from link left join person as maker on maker.id = link.made_by_person_id left join person as worker on worker.id = link.person_id where link.department_id = $1`;

interface Found {
  id: string;
  departmentId: string;
  kind: LinkKind;
  subjectId: string;
  pinHash: string | null;
  notBeforeAt: Instant;
  expiresAt: Instant;
  revokedAt: Instant | null;
  maySignOff: boolean;
  workerName: string | null;
  personId: string | null;
  roles: Role[] | null;
}

const FOUND = `select id, department_id as "departmentId", kind, subject_id as "subjectId", pin_hash as "pinHash", not_before_at as "notBeforeAt", expires_at as "expiresAt",
    revoked_at as "revokedAt", may_sign_off as "maySignOff", worker_name as "workerName", person_id as "personId", roles
  from link_of($1)`;

/** What the link of a table has beyond any link's. */
export interface MoreOfLink {
  /** digits that are told apart from the address */
  pin?: string;
  /** whose own way in it is */
  personId?: string;
  maySignOff?: boolean;
}

/** Links let somebody in without a sign-in, to one subject and for a time: one sponsor's page, one night's table. */
@Injectable()
export class LinkService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(SignInAttempts) private readonly attempts: SignInAttempts,
  ) {}

  /** Whoever calls has looked that the subject is the department's own. Answers the token, which is kept nowhere. */
  async make(kind: LinkKind, subjectId: string, form: Omit<LinkDto, 'label'> & { label: string | null }, { pin, personId, maySignOff = false }: MoreOfLink = {}): Promise<NewLinkView> {
    const now = new Date().toISOString() as Instant;
    const notBeforeAt = form.notBeforeAt ? instantOf(form.notBeforeAt) : now;
    const expiresAt = instantOf(form.expiresAt);
    if (expiresAt <= notBeforeAt || expiresAt <= now) refuse('link-ends-before-it-starts', {}, { expiresAt: 'is later than now and than its start' });
    const token = randomBytes(32).toString('base64url');
    const pinHash = pin === undefined ? null : pinHashOf(pin, token);
    const who = { label: form.label, personId: personId ?? null, maySignOff, madeByPersonId: this.work.personId, madeAt: now };
    const [link] = await this.work.insert(Link, { kind, subjectId, notBeforeAt, expiresAt, tokenHash: hashOf(token), pinHash, revokedAt: null, ...who });
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
   * The click on Start: answers what the cookie holds from now on. Guesses at a link's PIN slow down that link and no other, because a
   * whole school may share one address; guesses at links that are none slow down their address.
   *
   * @throws Refused `link-not-good`, the same for a link that never was, is revoked or has ended, and for a wrong PIN;
   *   `link-not-yet-open` only where the PIN is right
   */
  async start(token: string, pin: string | null, address: string): Promise<{ cookie: string; kind: LinkKind; expiresAt: string }> {
    const found = await this.find(token);
    const addressHash = hashOf(`link from ${address}`);
    const whoHash = found ? hashOf(`link ${hashOf(token)}`) : addressHash;
    const state = found && linkStateAt(found, new Date().toISOString() as Instant);
    const knowsPin = found !== null && (found.pinHash === null || (pin !== null && same(pinHashOf(pin, token), found.pinHash)));
    const isGood = knowsPin && (state === 'open' || (state === 'early' && found.pinHash !== null));
    // One unit, so that of many guesses at once each is looked at with those before it written down.
    await this.work.runAs(NOWHERE, async () => {
      if (found?.pinHash) await this.attempts.refuseUnlessAlone(whoHash);
      await this.attempts.refuseWhileDelayed(whoHash, whoHash);
      await this.attempts.record(whoHash, whoHash, isGood);
    });
    if (!isGood) return refuse('link-not-good');
    return state === 'early' ? refuse('link-not-yet-open') : { cookie: cookieOf(token, found.pinHash), kind: found.kind, expiresAt: found.expiresAt };
  }

  /** Whose link these cookies carry: the first that fits, else null. Revoked and ended links are told too; whoever asks looks at the state. */
  async visitorOf(cookies: readonly string[], fits: (visitor: LinkVisitor) => boolean): Promise<LinkVisitor | null> {
    const now = new Date().toISOString() as Instant;
    for (const cookie of cookies) {
      const token = cookie.split('.')[0]!;
      const found = await this.find(token);
      const visitor = found && same(cookie, cookieOf(token, found.pinHash)) ? visitorOfLink(found, now) : null;
      if (visitor && fits(visitor)) return visitor;
    }
    return null;
  }

  /**
   * Who bears this token, for a program that keeps no cookie and has the token in its address. Null for a link that never was, is revoked,
   * has ended or opens something else. Whoever asks for the same that never was, or for many such, waits.
   *
   * @throws Refused `sign-in-delayed`
   */
  async bearer(token: string, right: LinkRight, address: string): Promise<LinkVisitor | null> {
    const found = await this.find(token);
    if (found) {
      const visitor = found.pinHash === null ? visitorOfLink(found, new Date().toISOString() as Instant) : null;
      return visitor?.state === 'open' && mayUseByLink(visitor, right) ? visitor : null;
    }
    const [whoHash, addressHash] = [hashOf(`calendar ${hashOf(token)}`), hashOf(`calendar from ${address}`)];
    await this.work.runAs(NOWHERE, async () => {
      await this.attempts.refuseWhileDelayed(whoHash, addressHash);
      await this.attempts.record(whoHash, addressHash, false);
    });
    return null;
  }

  /** The person's own ways in, here; a new password ends them like the sessions. */
  async revokeAllOf(personId: string): Promise<void> {
    await this.work.sql('update link set revoked_at = now(), version = version + 1 where department_id = $1 and person_id = $2 and revoked_at is null', [personId]);
  }

  /** Signing out is meant: the person's own ways in that this browser holds are worth nothing any more. */
  async revokeHeld(cookies: readonly string[], personId: string): Promise<void> {
    for (const cookie of cookies) {
      const own = await this.visitorOf([cookie], (one) => one.personId === personId);
      if (!own) continue;
      await this.work.runAs({ departmentId: own.departmentId, personId }, () =>
        this.work.sql('update link set revoked_at = now(), version = version + 1 where department_id = $1 and id = $2 and revoked_at is null', [own.linkId]),
      );
    }
  }

  private async find(token: string): Promise<Found | null> {
    const [row] = await this.work.runAs(NOWHERE, () => this.work.sqlEverywhere<Found>(FOUND, [hashOf(token)]));
    return row ?? null;
  }
}

/** A person's own link is worth what the person's roles are worth today. */
function visitorOfLink(found: Found, now: Instant): LinkVisitor {
  const { id, departmentId, kind, subjectId, personId, roles } = found;
  const worksHere = personId === null || mayUse(roles ?? [], 'log a night');
  return {
    linkId: id, departmentId, kind, subjectId, personId,
    workerName: found.workerName ?? '',
    maySignOff: personId === null ? found.maySignOff : mayUse(roles ?? [], 'sign off a night'),
    endsAt: found.expiresAt,
    state: worksHere ? linkStateAt(found, now) : 'revoked',
  };
}

/** The hash of a PIN is worth nothing without the token. */
export function pinHashOf(pin: string, token: string): string {
  return hashOf(`${token} ${pin}`);
}

/** The token, and behind it the proof that the PIN of the link was known: a new PIN ends it. */
export function cookieOf(token: string, pinHash: string | null): string {
  return pinHash === null ? token : `${token}.${hashOf(`${token} opened ${pinHash}`)}`;
}

function same(one: string, other: string): boolean {
  const [left, right] = [one, other].map((text) => createHash('sha256').update(text).digest());
  return timingSafeEqual(left!, right!);
}
