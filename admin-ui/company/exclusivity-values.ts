import { only } from '../api/changes.ts';

const RIGHT = ['id', 'categoryId', 'reach', 'schoolId', 'startsOn', 'endsOn', 'gameIds', 'windowKinds'] as const;

/** What the form sends of the exclusive rights; words the server made stay behind. */
export function exclusivitiesOf(values: Record<string, unknown>): Record<string, unknown>[] {
  return ((values['exclusivities'] ?? []) as Record<string, unknown>[]).map((one) => only(one, ...RIGHT));
}
