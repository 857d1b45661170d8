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

test.each([
  ['sponsor', false, 'answer own copy', true],
  ['table', true, 'answer own copy', false],
  ['table', false, 'work the table', true],
  ['sponsor', false, 'work the table', false],
  ['table', true, 'sign off by link', true],
  ['table', false, 'sign off by link', false],
  ['sponsor', true, 'sign off by link', false],
  ['gamesFeed', false, 'subscribe to games', true],
  ['gamesFeed', true, 'subscribe to nights', false],
  ['nightsFeed', false, 'subscribe to nights', true],
  ['table', true, 'subscribe to nights', false],
] as const)('the link of a %s (may sign off: %s) and the right to %s: %s', (kind, maySignOff, right, may) => {
  expect(mayUseByLink({ kind, maySignOff }, right)).toBe(may);
});

test('no right of a link is a right of a role, so that neither opens the other’s door', () => {
  const both = (Object.keys(LINK_RIGHTS) as LinkRight[]).filter((right) => right in ROLE_RIGHTS);
  expect(both).toEqual([]);
  for (const kinds of Object.values(LINK_RIGHTS)) for (const kind of kinds) expect(LINK_KINDS).toContain(kind);
});
