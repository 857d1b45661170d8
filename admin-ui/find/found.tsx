import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { count } from '../words/count.ts';
import type { FoundDocument, FoundDocuments } from './types.ts';
import { FOUND_BY_WORDS, KIND_WORDS, RESOURCES, STATE_WORDS } from './words.ts';

/** What was found, the nearest first: by number, then by amount, check number, name. */
export function Found({ q, found }: { q: string; found: FoundDocuments }) {
  const { data, total, amountCents } = found;
  if (data.length === 0) {
    return <EmptyList>{`Nothing has “${q}” in its number, name or check number${amountCents === null ? '' : `, and nothing is of ${moneyText(amountCents)}`}. An amount is found when it is written whole, such as 350 or 1,234.50.`}</EmptyList>;
  }
  return (
    <>
      <p role="status">{count(total, 'document')} found{total > data.length ? `, the first ${data.length} are shown` : ''}.</p>
      <Rows<FoundDocument>
        label="Documents found"
        rows={data}
        keyOf={(one) => `${one.kind} ${one.id}`}
        columns={[
          { label: 'Document', show: (one) => <Go resource={RESOURCES[one.kind]} id={one.id}>{KIND_WORDS[one.kind]} {one.number}</Go> },
          { label: 'Day', show: (one) => dayText(one.on) },
          { label: 'Name', show: (one) => one.name },
          { label: 'Check or reference', show: (one) => one.reference ?? '–' },
          { label: 'State', show: (one) => STATE_WORDS[one.state] ?? one.state },
          { label: 'Found by', show: (one) => FOUND_BY_WORDS[one.foundBy] },
          { label: 'Amount', numeric: true, show: (one) => moneyText(one.amountCents) },
        ]}
      />
    </>
  );
}
