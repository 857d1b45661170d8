import { only } from '../api/changes.ts';
import { CompanyExceptionInput, exceptionOf, useInTheWay } from '../company/company-exception-input.tsx';
import { CommandButton } from '../forms/command-button.tsx';
import { FormGrid } from '../forms/form-grid.tsx';
import { today } from '../format/day.ts';
import { CountInput } from '../inputs/count-input.tsx';
import { DayInput } from '../inputs/day-input.tsx';
import { MoneyInput } from '../inputs/money-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import type { Contract } from './types.ts';

/** For a department that starts in mid-season: what was given, billed and paid before. */
export function OpeningButton({ contract }: { contract: Contract }) {
  const commitments = contract.commitments ?? [];
  const inTheWay = useInTheWay('contracts', contract.id).filter((one) => one.because !== 'blocked' || !contract.categoryException);
  return (
    <CommandButton
      label="Sign with an opening position"
      title={`Opening position of ${contract.title}`}
      explains="For a contract that was running before it was entered here. It signs the contract with what was already given, billed and paid, so that statements begin at the right figures."
      path={`/contracts/${contract.id}/opening`}
      defaults={{ asOf: today(), given: commitments.map(() => 0), billedCents: 0, paidCents: 0 }}
      body={(values) => ({
        givenByCommitment: commitments.map((one, place) => ({ commitmentId: one.id, given: (values['given'] as number[])[place] ?? 0 })),
        billedCents: values['billedCents'] ?? 0,
        paidCents: values['paidCents'] ?? 0,
        asOf: values['asOf'],
        ...only(values, 'signedOn', 'signedByName'),
        ...only(exceptionOf(values, inTheWay), 'companyException'),
      })}
      confirmLabel="Sign with these figures"
      success="The contract is signed with its opening position."
    >
      <FormGrid>
        <DayInput source="signedOn" label="Signed on" helperText="Empty: the day below" />
        <WordsInput source="signedByName" label="Who signed for the sponsor" longest={120} />
      </FormGrid>
      <DayInput source="asOf" label="Figures as of" required />
      {commitments.map((one, place) => <CountInput key={one.id} source={`given.${place}`} label={`${one.readKindName}: reads given before`} required />)}
      <FormGrid>
        <MoneyInput source="billedCents" label="Billed before" required />
        <MoneyInput source="paidCents" label="Paid before" required />
      </FormGrid>
      <CompanyExceptionInput obstacles={inTheWay} />
    </CommandButton>
  );
}
