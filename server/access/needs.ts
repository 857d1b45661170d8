import { SetMetadata } from '@nestjs/common';
import type { LinkRight } from '../domain/access/link-rights.ts';
import type { Right } from '../domain/access/rights.ts';

export const NEEDS = 'needs';

/** The right a route asks for (the table is in domain/access/rights.ts). A route that asks for none, and is not open, refuses everybody. */
export const Needs = (right: Right) => SetMetadata(NEEDS, right);

export const NEEDS_LINK = 'needs-link';

/** The right that a link opens (the table is in domain/access/link-rights.ts). Such a route is for bearers of links alone. */
export const NeedsLink = (right: LinkRight) => SetMetadata(NEEDS_LINK, right);

export const OR_LINK = 'or-link';

/** Beside `@Needs`: who has no session with the right is let in by the link of that very night, which the address names as its `:id`. */
export const OrLink = (right: LinkRight) => SetMetadata(OR_LINK, right);
