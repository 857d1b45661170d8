import { useQueryClient } from '@tanstack/react-query';
import { useCallback, useEffect, useState } from 'react';
import { Title, useGetList } from 'react-admin';
import { useServer } from '../api/use-server.ts';
import { typedMoney } from '../format/money.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Section } from '../show/section.tsx';
import type { BatchCheck } from './batch.ts';
import { BatchRows } from './batch-rows.tsx';
import { Entry, NOTHING_WRITTEN } from './entry.tsx';
import { TermsFields } from './terms-fields.tsx';
import { Totals } from './totals.tsx';
import type { OpenPayer } from './types.ts';
import { useBatch } from './use-batch.ts';

function useSellers() {
  const { data = [] } = useGetList<{ id: string; name: string; keepsBooksHere: boolean }>('sellers', { pagination: { page: 1, perPage: 100 }, sort: { field: 'name', order: 'ASC' } });
  return data.filter((seller) => seller.keepsBooksHere);
}

/** Many checks in a row, by keyboard alone. */
export function CheckEntryPage() {
  const queries = useQueryClient();
  const readAgain = useCallback(() => void queries.invalidateQueries({ queryKey: ['server'] }), [queries]);
  const { terms, checks, add, change, leaveOut, setTerms, sendWaiting, begin } = useBatch(readAgain);
  const [written, setWritten] = useState(NOTHING_WRITTEN);
  const sellers = useSellers();
  const only = sellers.length === 1 ? sellers[0]!.id : null;
  useEffect(() => {
    if (only && terms.sellerId === '') setTerms({ sellerId: only });
  }, [only, terms.sellerId]);
  const { data } = useServer<{ data: OpenPayer[] }>(terms.sellerId ? `/open-payers?sellerId=${terms.sellerId}` : null);
  const correct = (check: BatchCheck) => {
    setWritten({ payer: data?.data.find((payer) => payer.id === check.payerId) ?? null, reference: check.reference, amount: typedMoney(check.amountCents) });
    leaveOut(check.key);
  };
  return (
    <>
      <Title title="Enter checks" />
      <Section title="This batch" lead="These stay for all its checks. Run the adding machine first if you like: at the end both totals must agree.">
        <TermsFields terms={terms} sellers={sellers} isBegun={checks.length > 0} onChange={setTerms} />
      </Section>
      <Section title="Next check" lead="A few letters of the name and Enter, the number and Enter, the amount and Enter: you see which invoices it pays, and Enter records it.">
        {data ? (
          <Entry payers={data.data} sellerId={terms.sellerId} checks={checks} written={written} onWrite={setWritten} onRecord={(check) => { add(check); setWritten(NOTHING_WRITTEN); }} />
        ) : (
          <EmptyList>Choose the seller of record first.</EmptyList>
        )}
      </Section>
      <Section title="Entered so far">
        <Totals terms={terms} checks={checks} onBegin={begin} onSendAgain={sendWaiting} />
        {checks.length === 0 ? <EmptyList>No check yet.</EmptyList> : <BatchRows checks={checks} onTakenBack={(key) => change(key, { state: 'takenBack' })} onCorrect={correct} onLeaveOut={leaveOut} />}
      </Section>
    </>
  );
}
