import { Go } from '../fields/go.tsx';
import { Tag } from '../fields/tag.tsx';
import { dayText } from '../format/day.ts';
import type { PerformanceStatement } from './types.ts';

/** Whether a statement still stands, and where the next one is. */
export function StatementState({ statement: { replacedBy, isOutOfDate } }: { statement: PerformanceStatement }) {
  if (replacedBy) {
    return (
      <>
        Replaced by <Go resource="performance-statements" id={replacedBy.id}>statement {replacedBy.number} of {dayText(replacedBy.issuedOn)}</Go>
      </>
    );
  }
  return isOutOfDate ? <Tag mood="care">The books have changed since</Tag> : <Tag mood="good">Stands</Tag>;
}
