import type { SponsorPage } from './types.ts';

const PLACE = 'rafterline.for-sponsors.school';

/** The school's own name and numbers, so that a phone on which the link was good once can say whom to call when it is not any more. Nothing of the sponsor. */
export type KnownSchool = Pick<SponsorPage, 'departmentName' | 'contacts'>;

export function rememberSchool({ departmentName, contacts }: KnownSchool): void {
  try {
    localStorage.setItem(PLACE, JSON.stringify({ departmentName, contacts }));
  } catch {
    // A private window keeps nothing; then the page says it in general.
  }
}

export function knownSchool(): KnownSchool | null {
  try {
    const kept = JSON.parse(localStorage.getItem(PLACE) ?? 'null') as KnownSchool | null;
    return kept && typeof kept.departmentName === 'string' && Array.isArray(kept.contacts) ? kept : null;
  } catch {
    return null;
  }
}
