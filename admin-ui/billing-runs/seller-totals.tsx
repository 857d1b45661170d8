import { moneyText } from '../format/money.ts';
import { Rows } from '../lists/rows.tsx';
import { numberText } from '../words/count.ts';
import type { SellerTotal } from './types.ts';

export const SellerTotals = ({ totals }: { totals: readonly SellerTotal[] }) => (
  <Rows<SellerTotal>
    label="Totals by seller of record"
    rows={totals}
    keyOf={(total) => total.sellerId}
    columns={[
      { label: 'Seller of record', show: (total) => total.sellerName },
      { label: 'Invoices', numeric: true, show: (total) => numberText(total.invoices) },
      { label: 'Net', numeric: true, show: (total) => moneyText(total.netCents) },
      { label: 'To pay', numeric: true, show: (total) => moneyText(total.grossCents) },
    ]}
  />
);
