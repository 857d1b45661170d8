import { Go } from '../fields/go.tsx';
import { ListPage } from '../lists/list-page.tsx';
import { count } from '../words/count.ts';
import type { LayoutOfSeller } from './types.ts';

export const LayoutList = () => (
  <ListPage<LayoutOfSeller>
    title="Journal layouts"
    empty="No seller of record keeps its books here yet."
    columns={[
      { label: 'Seller', show: (layout) => <Go to={`/journal-layouts/${layout.sellerId}`}>{layout.sellerName}</Go> },
      { label: 'Layout', show: (layout) => (layout.version === 0 ? 'As it comes; not laid out yet' : layout.name) },
      { label: 'Columns', numeric: true, show: (layout) => count(layout.columns.length, 'column') },
      { label: 'Code string', show: (layout) => layout.codeParts.map((part) => part.name).join(layout.separator || ' ') || '–' },
    ]}
  />
);
