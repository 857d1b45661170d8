import { useGetList } from 'react-admin';
import { Go } from '../fields/go.tsx';
import { moneyText } from '../format/money.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { Section } from '../show/section.tsx';
import { SeasonName } from './season-name.tsx';
import type { RateCardLine } from './types.ts';

/** What one read of a kind costs, season by season. */
export function RatesOfKind({ readKindId }: { readKindId: string }) {
  const { data = [], isPending } = useGetList<RateCardLine>('rate-card-lines', { pagination: { page: 1, perPage: 100 }, sort: { field: 'priceCents', order: 'DESC' } });
  if (isPending) return null;
  const rows = data.filter((line) => line.readKindId === readKindId);
  return (
    <Section title="Prices">
      {rows.length === 0 ? (
        <EmptyList>No price yet. Add one on the rate card, so that a contract can share its price over what it promises.</EmptyList>
      ) : (
        <Rows<RateCardLine>
          label="Prices of this read kind"
          rows={rows}
          columns={[
            { label: 'Season', show: (line) => <Go resource="rate-card-lines" id={line.id}><SeasonName id={line.seasonId} /></Go> },
            { label: 'Price of one', numeric: true, show: (line) => moneyText(line.priceCents) },
          ]}
        />
      )}
    </Section>
  );
}
