import { Go } from '../fields/go.tsx';
import { Tag } from '../fields/tag.tsx';
import { moneyText } from '../format/money.ts';
import { choiceFilter, findFilter, pickFilter } from '../lists/filters.tsx';
import { ListPage } from '../lists/list-page.tsx';
import { linesInWords } from './line-words.ts';
import type { Package } from './types.ts';

const OFFERED = [{ id: 'true', name: 'Offered now' }, { id: 'false', name: 'Not offered' }];

export const PackageList = () => (
  <ListPage<Package>
    title="Packages"
    addLabel="Put a package together"
    sort={{ field: 'priceCents', order: 'DESC' }}
    filters={[findFilter(), pickFilter('seasonId', 'seasons', 'Season'), choiceFilter('isOffered', 'Offered', OFFERED)]}
    empty="A package is a bundle of reads and other benefits with one price, ready to offer. Put one together from the rate card."
    columns={[
      { label: 'Package', sortBy: 'name', show: (one) => <Go resource="packages" id={one.id}>{one.name}</Go> },
      { label: 'Season', sortBy: 'seasonName', show: (one) => one.seasonName },
      { label: 'What is in it', show: (one) => linesInWords(one.lines) },
      { label: 'Price', sortBy: 'priceCents', numeric: true, show: (one) => moneyText(one.priceCents) },
      { label: 'At the rate card', numeric: true, show: (one) => moneyText(one.worthCents) },
      { label: 'Offered', sortBy: 'isOffered', show: (one) => (one.isOffered ? <Tag mood="good">Offered now</Tag> : 'Not offered') },
    ]}
  />
);
