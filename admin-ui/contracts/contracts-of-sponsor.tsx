import { useGetList } from 'react-admin';
import { Go } from '../fields/go.tsx';
import { moneyText } from '../format/money.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { iMay } from '../session/rights.ts';
import { Section } from '../show/section.tsx';
import { TERM_STATE_WORDS, wordFor } from '../words/choices.ts';
import type { Contract } from './types.ts';

export function ContractsOfSponsor({ sponsorId }: { sponsorId: string }) {
  const { data = [], isPending } = useGetList<Contract>('contracts', { filter: { sponsorId }, pagination: { page: 1, perPage: 100 }, sort: { field: 'title', order: 'ASC' } }, { enabled: iMay('contracts', 'list') });
  if (isPending) return null;
  return (
    <Section title="Contracts">
      {data.length === 0 ? (
        <EmptyList>No contract with this sponsor yet. Press “New contract” when there is a deal to write down.</EmptyList>
      ) : (
        <Rows<Contract>
          label="Contracts of this sponsor"
          rows={data}
          columns={[
            { label: 'Contract', show: (contract) => <Go resource="contracts" id={contract.id}>{contract.title}</Go> },
            { label: 'State', show: (contract) => wordFor(TERM_STATE_WORDS, contract.term.state) },
            { label: 'Price', numeric: true, show: (contract) => (contract.term.pricing === 'perRead' ? 'Per read' : moneyText(contract.term.priceCents)) },
          ]}
        />
      )}
    </Section>
  );
}
