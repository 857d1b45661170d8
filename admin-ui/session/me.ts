import type { Role } from '../../server/domain/access/rights.ts';
import { ask } from '../api/http.ts';

export type { Role };


export interface Department {
  id: string;
  name: string;
  zone: string;
  currency: string;
  locale: string;
  settings?: { prayerOn: boolean; foulCountsRead: boolean; bankShotMention: 'nextWindow' | 'deadBall' | 'atOnce'; cutShortCounts: boolean; returnedCheckFeeCents?: number; takerMayPost?: boolean };
}

export interface Me {
  person: { id: string; name: string; sayAs?: string | null; email?: string };
  department: Department;
  roles: Role[];
  memberships: { departmentId: string; departmentName: string; roles: Role[] }[];
}

const BEFORE_SIGN_IN: Department = { id: '', name: '', zone: 'UTC', currency: 'USD', locale: 'en-US' };

let known: Me | null = null;
let asking: Promise<Me> | null = null;

/** Who is signed in; asked once and kept until sign-out, because every amount and every hour is written in the department's way. */
export function me(): Promise<Me> {
  asking ??= ask<Me>('/me').then(remember, (error: unknown) => {
    asking = null;
    throw error;
  });
  return asking;
}

export function remember(answer: Me): Me {
  known = answer;
  asking = Promise.resolve(answer);
  document.documentElement.lang = answer.department.locale;
  return answer;
}

export function forget(): void {
  known = null;
  asking = null;
}

export const knownMe = (): Me | null => known;
export const department = (): Department => known?.department ?? BEFORE_SIGN_IN;
