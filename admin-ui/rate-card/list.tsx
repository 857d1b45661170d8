import { Go } from '../fields/go.tsx';
import { moneyText } from '../format/money.ts';
import { pickFilter } from '../lists/filters.tsx';
import { ListPage } from '../lists/list-page.tsx';
import type { RateCardLine } from './types.ts';
import { SeasonName } from './season-name.tsx';

export const RateList = () => (
  <ListPage<RateCardLine>
    title="Rate card"
    addLabel="Add a price"
    sort={{ field: 'priceCents', order: 'DESC' }}
    filters={[pickFilter('seasonId', 'seasons', 'Season')]}
    empty="The rate card holds what one read or benefit costs in a season. A contract’s price is shared over its lines by these prices, so fill it in before the first contract."
    columns={[
      { label: 'For', show: (line) => <Go resource="rate-card-lines" id={line.id}>{line.readKindName ?? line.benefitName}</Go> },
      { label: 'What', show: (line) => (line.readKindId ? 'Read' : 'Other benefit') },
      { label: 'Season', show: (line) => <SeasonName id={line.seasonId} /> },
      { label: 'Price of one', sortBy: 'priceCents', numeric: true, show: (line) => moneyText(line.priceCents) },
    ]}
  />
);
