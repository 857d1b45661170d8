import { only } from '../api/changes.ts';
import { CommandButton } from '../forms/command-button.tsx';
import { FormGrid } from '../forms/form-grid.tsx';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { CountInput } from '../inputs/count-input.tsx';
import { MoneyInput } from '../inputs/money-input.tsx';
import type { Contract } from './types.ts';

/** More reads for a price. */
export const AmendButton = ({ contract }: { contract: Contract }) => (
  <CommandButton
    label="Amend"
    title={`Amend ${contract.title}`}
    explains="Adds reads to one line for an added price. It holds from now on: what was given, earned or billed keeps its amount."
    path={`/contracts/${contract.id}/amend`}
    body={(values) => only(values, 'commitmentId', 'reads', 'priceCents')}
    success="The contract is amended."
  >
    <ChoiceInput source="commitmentId" label="Line" choices={(contract.commitments ?? []).map((one) => ({ id: one.id!, name: one.readKindName ?? '' }))} required />
    <FormGrid>
      <CountInput source="reads" label="Reads to add" min={1} required />
      <MoneyInput source="priceCents" label="Price to add" required />
    </FormGrid>
  </CommandButton>
);
