import { CommandButton } from '../forms/command-button.tsx';
import { FormGrid } from '../forms/form-grid.tsx';
import { today } from '../format/day.ts';
import { DayInput } from '../inputs/day-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import type { Contract } from './types.ts';

/** Signing makes the reads owed. */
export const SignButton = ({ contract }: { contract: Contract }) => (
  <CommandButton
    label="Sign"
    title={`Sign ${contract.title}`}
    explains="Signing fixes the terms: the contract gets its number, its reads are owed, and the price is shared over the lines for good. Later changes are amendments."
    path={`/contracts/${contract.id}/sign`}
    defaults={{ signedOn: today() }}
    success="The contract is signed. Its reads are owed."
    variant="contained"
  >
    <FormGrid>
      <DayInput source="signedOn" label="Signed on" required />
      <WordsInput source="signedByName" label="Who signed for the sponsor" longest={120} required />
    </FormGrid>
  </CommandButton>
);
