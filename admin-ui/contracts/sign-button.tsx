import { CompanyExceptionInput, exceptionOf, useInTheWay } from '../company/company-exception-input.tsx';
import { CommandButton } from '../forms/command-button.tsx';
import { FormGrid } from '../forms/form-grid.tsx';
import { today } from '../format/day.ts';
import { DayInput } from '../inputs/day-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import type { Contract } from './types.ts';

/** Signing makes the reads owed. */
export function SignButton({ contract }: { contract: Contract }) {
  const inTheWay = useInTheWay('contracts', contract.id).filter((one) => one.because !== 'blocked' || !contract.categoryException);
  return (
    <CommandButton
      label="Sign"
      title={`Sign ${contract.title}`}
      explains="Signing fixes the terms: the contract gets its number, its reads are owed, and the price is shared over the lines for good. Later changes are amendments."
      path={`/contracts/${contract.id}/sign`}
      defaults={{ signedOn: today() }}
      body={(values) => exceptionOf(values, inTheWay)}
      success="The contract is signed. Its reads are owed."
      variant="contained"
    >
      <FormGrid>
        <DayInput source="signedOn" label="Signed on" required />
        <WordsInput source="signedByName" label="Who signed for the sponsor" longest={120} required />
      </FormGrid>
      <CompanyExceptionInput obstacles={inTheWay} />
    </CommandButton>
  );
}
