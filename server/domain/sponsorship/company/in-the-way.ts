import type { Day } from '../../day.ts';
import type { CompanyThere, DealAsked, DealThere, ExclusiveRight, ReservedRight, RightTerms } from './rights.ts';

/** What keeps a deal from being made. An exception is recorded against `againstId`. */
export type Obstacle =
  /** somebody else is promised to be the only one; the right's id */
  | { readonly because: 'exclusive'; readonly againstId: string; readonly right: ExclusiveRight }
  /** the category is somebody else's without a contract here; the reserved category's id */
  | { readonly because: 'reserved'; readonly againstId: string; readonly reserved: ReservedRight }
  /** the right that is asked for cannot be kept, another sponsor is there already, or was offered to be; the id of that contract or offer */
  | { readonly because: 'dealThere'; readonly againstId: string; readonly deal: DealThere; readonly right: RightTerms }
  /** the department does not take such sponsors; the category's id */
  | { readonly because: 'blocked'; readonly againstId: string; readonly categoryName: string };

interface Days {
  readonly startsOn: Day;
  readonly endsOn: Day | null;
}

/** Whether two stretches of days share one; both ends belong to a stretch. */
function shareADay(one: Days, other: Days): boolean {
  return (other.endsOn === null || one.startsOn <= other.endsOn) && (one.endsOn === null || other.startsOn <= one.endsOn);
}

function isAt(schoolId: string | null, schoolIds: readonly string[] | null): boolean {
  return schoolId === null || schoolIds === null || schoolIds.includes(schoolId);
}

const schoolsOf = (right: RightTerms): readonly string[] | null => (right.schoolId === null ? null : [right.schoolId]);
const shareOne = (one: readonly string[], other: readonly string[]): boolean => one.some((it) => other.includes(it));

/** Whether two rights to one category claim the same windows. A named game and a kind of window meet where their days do. */
function claimTheSame(one: RightTerms, other: RightTerms): boolean {
  if (one.categoryId !== other.categoryId || !shareADay(one, other) || !isAt(one.schoolId, schoolsOf(other))) return false;
  if (one.reach === 'game' && other.reach === 'game') return shareOne(one.gameIds, other.gameIds);
  if (one.reach === 'window' && other.reach === 'window') return shareOne(one.windowKinds, other.windowKinds);
  return true;
}

/** A right over the days shuts out every deal of its category; one over games only what was promised aloud in them. */
function shutsOut(right: RightTerms, deal: Pick<DealThere, 'categoryId' | 'startsOn' | 'endsOn' | 'schoolIds' | 'pinnedGameIds'>): boolean {
  if (right.categoryId !== deal.categoryId || !shareADay(right, deal) || !isAt(right.schoolId, deal.schoolIds)) return false;
  return right.reach === 'season' || (right.reach === 'game' && shareOne(right.gameIds, deal.pinnedGameIds));
}

/**
 * What is in the way of a deal, both ways: the rights of others that it would break, and the deals of others that would
 * break the rights it asks for. The sponsor's own deals never are. Rights over games and windows leave room for
 * competitors elsewhere, so they refuse no deal; the planner keeps competitors out of them.
 *
 * @source common practice, no source
 */
export function inTheWay(asked: DealAsked, there: CompanyThere): Obstacle[] {
  const isOther = (one: { sponsorId: string }): boolean => one.sponsorId !== asked.sponsorId;
  const exclusive = there.exclusive
    .filter(isOther)
    .filter((right) => shutsOut(right, asked) || asked.rights.some((own) => claimTheSame(own, right)))
    .map((right): Obstacle => ({ because: 'exclusive', againstId: right.id, right }));
  const reserved = there.reserved
    .filter((one) => [asked, ...asked.rights.map((right) => ({ ...right, schoolIds: schoolsOf(right) }))]
      .some((own) => own.categoryId === one.categoryId && shareADay(own, one) && isAt(one.schoolId, own.schoolIds)))
    .map((one): Obstacle => ({ because: 'reserved', againstId: one.id, reserved: one }));
  const deals = asked.rights.flatMap((right) =>
    there.deals
      .filter(isOther)
      .filter((deal) => shutsOut(right, deal))
      .map((deal): Obstacle => ({ because: 'dealThere', againstId: deal.dealId, deal, right })));
  const blocked: Obstacle[] = asked.isBlocked ? [{ because: 'blocked', againstId: asked.categoryId, categoryName: asked.categoryName }] : [];
  return [...blocked, ...reserved, ...exclusive, ...deals];
}
