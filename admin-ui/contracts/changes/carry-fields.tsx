import { useGetList, useGetOne } from 'react-admin';
import { useWatch } from 'react-hook-form';
import { Go } from '../../fields/go.tsx';
import { FormGrid } from '../../forms/form-grid.tsx';
import { ChoiceInput } from '../../inputs/choice-input.tsx';
import { CountInput } from '../../inputs/count-input.tsx';
import { EmptyList } from '../../lists/empty-list.tsx';
import type { Contract } from '../types.ts';
import { linesOf } from './lines-of.ts';
import { MemoReason } from './simple-fields.tsx';

/** Into another signed contract of the same sponsor and the same seller of record. */
export function CarryFields({ contract }: { contract: Contract }) {
  const { data = [], isPending } = useGetList<Contract>('contracts', { filter: { sponsorId: contract.sponsorId, sellerId: contract.sellerId, state: 'signed' }, pagination: { page: 1, perPage: 100 }, sort: { field: 'startsOn', order: 'DESC' } });
  const others = data.filter((one) => one.id !== contract.id);
  const toContractId = useWatch({ name: 'toContractId' }) as string | undefined;
  const { data: into } = useGetOne<Contract>('contracts', { id: toContractId ?? '' }, { enabled: Boolean(toContractId) });
  if (!isPending && others.length === 0) return <EmptyList>There is no other signed contract of this sponsor with the same seller. <Go to="/contracts/create">Write and sign the next one</Go> first.</EmptyList>;
  return (
    <>
      <FormGrid>
        <CountInput source="count" label="Carry over" min={1} required />
        <ChoiceInput source="lineId" label="Of" choices={linesOf(contract)} required />
        <ChoiceInput
          source="toContractId" label="Into the contract" required choices={others.map((one) => ({ id: one.id, name: `${one.number ?? ''} ${one.title}`.trim() }))}
        />
        {into && <ChoiceInput source="toLineId" label="As" choices={linesOf(into)} required />}
      </FormGrid>
      <MemoReason />
    </>
  );
}
