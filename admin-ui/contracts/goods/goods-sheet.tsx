import { useServer } from '../../api/use-server.ts';
import { Tag } from '../../fields/tag.tsx';
import { dayText } from '../../format/day.ts';
import { moneyText } from '../../format/money.ts';
import { EmptyList } from '../../lists/empty-list.tsx';
import { Rows } from '../../lists/rows.tsx';
import { iMay } from '../../session/rights.ts';
import { Figures } from '../../show/figures.tsx';
import { Reading } from '../../show/reading.tsx';
import { Section } from '../../show/section.tsx';
import { numberText } from '../../words/count.ts';
import { PromiseButton } from './promise-button.tsx';
import { ReceiveButton } from './receive-button.tsx';
import { ShortageButtons } from './shortage-buttons.tsx';
import type { Goods, GoodsDelivery, GoodsPromise } from './types.ts';

function Promises({ goods }: { goods: Goods }) {
  const receives = goods.isSigned && goods.openCents > 0 && iMay('invoices', 'create');
  if (goods.promises.length === 0) return <EmptyList>Nothing is written down yet. Write down what the sponsor pays with, so that each delivery can be counted.</EmptyList>;
  return (
    <Rows<GoodsPromise>
      label="Promised goods"
      rows={goods.promises}
      columns={[
        { label: 'What', show: (one) => one.what },
        { label: 'One is worth', numeric: true, show: (one) => moneyText(one.unitCents) },
        { label: 'Received', numeric: true, show: (one) => `${numberText(one.received)} of ${numberText(one.quantity)}` },
        { label: 'Due on', show: (one) => (one.isLate ? <Tag mood="bad">{numberText(one.missing)} missing since {dayText(one.dueOn)}</Tag> : dayText(one.dueOn)) },
        ...(receives ? [{ label: 'Record', show: (one: GoodsPromise) => one.missing > 0 && <ReceiveButton goods={goods} promise={one} /> }] : []),
      ]}
    />
  );
}

function Sheet({ goods }: { goods: Goods }) {
  const writes = iMay('contracts', 'edit') && (!goods.isSigned || goods.promises.length === 0);
  return (
    <>
      <Section title="Promised goods" actions={<>{writes && <PromiseButton goods={goods} />}{goods.isSigned && goods.promises.length > 0 && goods.openCents > 0 && iMay('invoices', 'create') && <ShortageButtons goods={goods} />}</>}>
        <Figures figures={[{ label: 'Price', value: moneyText(goods.priceCents) }, { label: 'Received', value: moneyText(goods.receivedCents) }, { label: 'Still to come', value: moneyText(goods.isSigned ? goods.openCents : goods.priceCents) }]} />
        <Promises goods={goods} />
      </Section>
      {goods.isSigned && (
        <Section title="Deliveries">
          {goods.deliveries.length === 0 ? (
            <EmptyList>None yet.</EmptyList>
          ) : (
            <Rows<GoodsDelivery>
              label="Deliveries"
              rows={goods.deliveries}
              columns={[
                { label: 'What', show: (one) => `${numberText(one.quantity)} × ${one.what}` },
                { label: 'Received on', show: (one) => dayText(one.receivedOn) },
                { label: 'Worth', numeric: true, show: (one) => moneyText(one.amountCents) },
                { label: 'Proof', show: (one) => one.proof },
              ]}
            />
          )}
        </Section>
      )}
    </>
  );
}

/** What a sponsor pays with instead of money. */
export function GoodsSheet({ contractId }: { contractId: string }) {
  const asked = useServer<Goods>(`/contracts/${contractId}/goods-promises`);
  return <Reading of={asked}>{(goods) => <Sheet goods={goods} />}</Reading>;
}
