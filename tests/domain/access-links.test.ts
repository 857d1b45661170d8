import { expect, test } from 'vitest';
import { instantOf } from '../../server/domain/instant.ts';
import { LINK_KINDS, LINK_RIGHTS, linkStateAt, mayUseByLink } from '../../server/domain/access/link-rights.ts';
import type { LinkRight } from '../../server/domain/access/link-rights.ts';
import { ROLE_RIGHTS } from '../../server/domain/access/rights.ts';

const link = { notBeforeAt: instantOf('2026-12-01T17:00:00.000Z'), expiresAt: instantOf('2026-12-05T09:00:00.000Z'), revokedAt: null };

test.each([
  ['2026-12-01T16:59:59.999Z', 'early'],
  ['2026-12-01T17:00:00.000Z', 'open'],
  ['2026-12-05T08:59:59.999Z', 'open'],
  ['2026-12-05T09:00:00.000Z', 'ended'],
])('at %s the link is %s', (at, state) => {
  expect(linkStateAt(link, instantOf(at))).toBe(state);
});

test('a revoked link is revoked whatever its time', () => {
  expect(linkStateAt({ ...link, revokedAt: instantOf('2026-12-02T00:00:00.000Z') }, instantOf('2026-12-03T00:00:00.000Z'))).toBe('revoked');
});

test('a sponsor’s link answers that sponsor’s copy, a table’s link does not', () => {
  expect(mayUseByLink('sponsor', 'answer own copy')).toBe(true);
  expect(mayUseByLink('table', 'answer own copy')).toBe(false);
});

test('no right of a link is a right of a role, so that neither opens the other’s door', () => {
  const both = (Object.keys(LINK_RIGHTS) as LinkRight[]).filter((right) => right in ROLE_RIGHTS);
  expect(both).toEqual([]);
  for (const kinds of Object.values(LINK_RIGHTS)) for (const kind of kinds) expect(LINK_KINDS).toContain(kind);
});
