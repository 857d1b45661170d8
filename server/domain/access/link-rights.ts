import type { Instant } from '../instant.ts';

/** What a link can stand for: one night's table, one sponsor's page, the form by which the public asks something of one night, or a calendar to subscribe to. */
export const LINK_KINDS = ['table', 'sponsor', 'request', 'gamesFeed', 'nightsFeed'] as const;
export type LinkKind = (typeof LINK_KINDS)[number];

/** What the bearer of a link of each kind may do, with its own subject and nothing else. */
export const LINK_RIGHTS = {
  'see own proof': ['sponsor'],
  'see own money': ['sponsor'],
  'answer own copy': ['sponsor'],
  'answer own proposals': ['sponsor'],
  'ask about own reads': ['sponsor'],
  'work the table': ['table'],
  'sign off by link': ['table'],
  'subscribe to games': ['gamesFeed'],
  'subscribe to nights': ['nightsFeed'],
} as const satisfies Record<string, readonly LinkKind[]>;

export type LinkRight = keyof typeof LINK_RIGHTS;

/** What only an adult may do: a substitute's link says so, a student spotter's does not. */
const FOR_ADULTS: ReadonlySet<LinkRight> = new Set(['sign off by link']);

/** Whether a link opens a right; a person's roles never do, nor a link a person's rights. */
export function mayUseByLink(link: { kind: LinkKind; maySignOff: boolean }, right: LinkRight): boolean {
  if (FOR_ADULTS.has(right) && !link.maySignOff) return false;
  return (LINK_RIGHTS[right] as readonly LinkKind[]).includes(link.kind);
}

export type LinkState = 'early' | 'open' | 'ended' | 'revoked';

/** Where a link stands at a moment: it opens at its first moment and no longer at its last one. */
export function linkStateAt(link: { notBeforeAt: Instant; expiresAt: Instant; revokedAt: Instant | null }, now: Instant): LinkState {
  if (link.revokedAt !== null) return 'revoked';
  if (now >= link.expiresAt) return 'ended';
  return now < link.notBeforeAt ? 'early' : 'open';
}
