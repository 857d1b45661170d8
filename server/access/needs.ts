import { SetMetadata } from '@nestjs/common';
import type { Right } from '../domain/access/rights.ts';

export const NEEDS = 'needs';

/** The right a route asks for (the table is in domain/access/rights.ts). A route that asks for none, and is not open, refuses everybody. */
export const Needs = (right: Right) => SetMetadata(NEEDS, right);
