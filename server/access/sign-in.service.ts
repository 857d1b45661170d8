import { Inject, Injectable } from '@nestjs/common';
import { whyNotPassword } from '../domain/access/password.ts';
import type { Role } from '../domain/access/rights.ts';
import { refuse } from '../domain/refusals.ts';
import { NOWHERE } from '../platform/database/scope.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { COMMON_PASSWORDS } from './common-passwords.ts';
import { NOBODYS_HASH, hashPassword, isPassword } from './password.ts';
import { LinkService } from './link.service.ts';
import { SessionService, hashOf } from './session.service.ts';
import { SignInAttempts } from './sign-in-attempts.service.ts';
import type { DepartmentOfMine, MeView, SignInDto } from './sign-in.dto.ts';

interface PersonRow {
  id: string;
  password_hash: string;
}

@Injectable()
export class SignInService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(SessionService) private readonly sessions: SessionService,
    @Inject(LinkService) private readonly links: LinkService,
    @Inject(SignInAttempts) private readonly attempts: SignInAttempts,
  ) {}

  /**
   * Answers a new session token. Short units around the hashing, which is never inside one; an unknown
   * person gets the same answer, as slowly, as a wrong password.
   */
  async signIn(form: SignInDto, address: string): Promise<{ token: string; me: MeView }> {
    const emailHash = hashOf(form.email);
    const addressHash = hashOf(address);
    const person = await this.work.runAs(NOWHERE, async () => {
      await this.attempts.refuseWhileDelayed(emailHash, addressHash);
      const [row] = await this.work.sqlEverywhere<PersonRow>('select id, password_hash from person where email = $1', [form.email]);
      return row ?? null;
    });
    const right = await isPassword(form.password, person?.password_hash ?? NOBODYS_HASH).catch(() => false);
    const succeeded = right && person !== null;
    await this.work.runAs(NOWHERE, () => this.attempts.record(emailHash, addressHash, succeeded));
    if (!succeeded) refuse('wrong-sign-in');
    const memberships = await this.membershipsOf(person.id);
    const chosen = memberships.find((one) => one.departmentId === form.departmentId) ?? memberships[0];
    if (!chosen) refuse('no-membership');
    const token = await this.work.runAs(NOWHERE, () => this.sessions.open(person.id, chosen.departmentId));
    return { token, me: await this.me(person.id, chosen.departmentId) };
  }

  async me(personId: string, departmentId: string): Promise<MeView> {
    const memberships = await this.membershipsOf(personId);
    const here = memberships.find((one) => one.departmentId === departmentId);
    if (!here) refuse('no-membership');
    return this.work.runAs({ departmentId, personId }, async () => {
      const [person] = await this.work.sqlEverywhere<MeView['person']>('select id, name, email, say_as as "sayAs" from person where id = $1', [personId]);
      const [department] = await this.work.sqlEverywhere<MeView['department']>(
        'select id, name, zone, currency, locale, settings from department where id = $1',
        [departmentId],
      );
      if (!person || !department) return refuse('not-found');
      return { person, department, roles: here.roles, memberships };
    });
  }

  /** Another department of the same person: a new token, the old one ends. */
  async choose(personId: string, departmentId: string, oldTokenHash: string): Promise<{ token: string; me: MeView }> {
    const me = await this.me(personId, departmentId);
    const token = await this.work.runAs(NOWHERE, async () => {
      await this.sessions.close(oldTokenHash);
      return this.sessions.open(personId, departmentId);
    });
    return { token, me };
  }

  /** Ends all sessions of the person; the answer's new token keeps this one signed in. */
  async changePassword(personId: string, departmentId: string, current: string, next: string): Promise<string> {
    const [row] = await this.work.runAs(NOWHERE, () =>
      this.work.sqlEverywhere<PersonRow>('select id, password_hash from person where id = $1', [personId]),
    );
    if (!row || !(await isPassword(current, row.password_hash))) refuse('wrong-password', {}, { current: 'is not right' });
    const passwordHash = await newPasswordHash(next, 'next');
    for (const { departmentId: one } of await this.membershipsOf(personId)) await this.work.runAs({ departmentId: one, personId }, () => this.links.revokeAllOf(personId));
    return this.work.runAs(NOWHERE, async () => {
      await this.work.sqlEverywhere('update person set password_hash = $1, version = version + 1 where id = $2', [passwordHash, personId]);
      await this.sessions.closeAllOf(personId);
      return this.sessions.open(personId, departmentId);
    });
  }

  private async membershipsOf(personId: string): Promise<DepartmentOfMine[]> {
    return this.work.runAs({ ...NOWHERE, personId }, () =>
      this.work.sqlEverywhere<DepartmentOfMine & { roles: Role[] }>(
        `select department.id as "departmentId", department.name as "departmentName", membership.roles
           from membership join department on department.id = membership.department_id
          where membership.person_id = $1 and (membership.ended_on is null or membership.ended_on > current_date)
          order by department.name collate "und-x-icu"`,
        [personId],
      ),
    );
  }
}

/** @throws Refused with the reason under the field the password was typed in */
export async function newPasswordHash(password: string, field: string): Promise<string> {
  const why = whyNotPassword(password, COMMON_PASSWORDS);
  if (why) refuse(why, {}, { [field]: PASSWORD_SENTENCES[why] });
  return hashPassword(password);
}

const PASSWORD_SENTENCES = {
  'password-too-short': 'has 15 characters or more; a short sentence is easiest to keep',
  'password-too-long': 'has at most 200 characters',
  'password-common': 'is one that others use too often',
} as const;
