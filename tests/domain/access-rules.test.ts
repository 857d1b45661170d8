import { describe, expect, test } from 'vitest';
import { whyNotPassword } from '../../server/domain/access/password.ts';
import { mayUse, rightsOf, ROLE_RIGHTS, whyNotChangeRoles } from '../../server/domain/access/rights.ts';
import type { Right } from '../../server/domain/access/rights.ts';
import { mustWait, nextTryAt, signInDelaySeconds } from '../../server/domain/access/sign-in-delay.ts';
import { instantOf } from '../../server/domain/instant.ts';
import { REFUSALS } from '../../server/domain/refusals.ts';

describe('a role and its rights', () => {
  test.each([
    ['director', 'sign contracts', true],
    ['bookkeeper', 'sign contracts', false],
    ['announcer', 'sign off a night', true],
    ['announcer', 'amend a night', false],
    ['announcer', 'see money', false],
    ['bookkeeper', 'see students', false],
    ['bookkeeper', 'close a month', true],
    ['director', 'close a month', false],
  ] as const)('a %s may "%s": %s', (role, right, may) => {
    expect(mayUse([role], right)).toBe(may);
  });

  test('a person with two roles has the rights of both and one without roles none', () => {
    expect(mayUse(['announcer', 'bookkeeper'], 'log a night')).toBe(true);
    expect(mayUse(['announcer', 'bookkeeper'], 'bill')).toBe(true);
    expect(rightsOf([])).toEqual([]);
  });

  test('every right belongs to somebody', () => {
    for (const right of Object.keys(ROLE_RIGHTS) as Right[]) expect(ROLE_RIGHTS[right].length).toBeGreaterThan(0);
  });

  test('the last director stays director', () => {
    expect(whyNotChangeRoles(['director'], ['announcer'], 0)).toBe('last-director');
    expect(whyNotChangeRoles(['director'], ['announcer'], 1)).toBeNull();
    expect(whyNotChangeRoles(['announcer'], [], 0)).toBeNull();
  });
});

describe('a password', () => {
  const common = new Set(['passwordpassword', 'correcthorsebatterystaple']);
  test.each([
    ['kestrels at the', null],
    ['kestrels at th', 'password-too-short'],
    ['ńńńńńńńńńńńńńńń', null],
    ['🏀'.repeat(14), 'password-too-short'],
    ['🏀'.repeat(15), null],
    ['a'.repeat(200), null],
    ['a'.repeat(201), 'password-too-long'],
    ['PasswordPassword', 'password-common'],
    ['correct horse battery staple', 'password-common'],
    ['onlysmallletterswithoutdigits', null],
  ])('%s: %s', (password, refusal) => {
    expect(whyNotPassword(password, common)).toBe(refusal);
  });

  test('each refusal of a password has its sentence', () => {
    for (const code of ['password-too-short', 'password-too-long', 'password-common'] as const) expect(REFUSALS[code].override).toBe('never');
  });
});

describe('a wrong password makes the next try wait', () => {
  test.each([
    [0, 0], [4, 0], [5, 1], [6, 2], [7, 4], [14, 512], [15, 900], [16, 900], [5000, 900],
  ])('after %i failures in a row it waits %i seconds', (failures, seconds) => {
    expect(signInDelaySeconds(failures)).toBe(seconds);
  });

  test('the try a second too early waits and the one on the second does not', () => {
    const failed = instantOf('2026-12-04T19:00:00Z');
    expect(nextTryAt(8, failed)).toBe('2026-12-04T19:00:08.000Z');
    expect(mustWait(8, failed, instantOf('2026-12-04T19:00:07.999Z'))).toBe(true);
    expect(mustWait(8, failed, instantOf('2026-12-04T19:00:08Z'))).toBe(false);
    expect(mustWait(0, null, failed)).toBe(false);
  });
});
