import { CommandButton } from '../../forms/command-button.tsx';
import { ReasonInput } from '../../forms/reason-input.tsx';
import { today } from '../../format/day.ts';
import { DayInput } from '../../inputs/day-input.tsx';
import { FlagInput } from '../../inputs/flag-input.tsx';
import { MoneyInput } from '../../inputs/money-input.tsx';
import { WordsInput } from '../../inputs/words-input.tsx';
import type { Contract } from '../types.ts';
import { ForeseenWords } from './foreseen.tsx';
import { countsByGame, ReadsFields } from './reads-fields.tsx';

type Values = Record<string, unknown>;

const said = (value: unknown): boolean => typeof value === 'string' && value.trim() !== '';
const readsOf = (contract: Contract, { commitmentId, gameId, count }: Values) => ({ commitmentId, count, ...(countsByGame(contract, commitmentId) ? { gameId } : {}) });
const named = (contract: Contract, values: Values): boolean => said(values['commitmentId']) && Number(values['count']) > 0 && (!countsByGame(contract, values['commitmentId']) || said(values['gameId']));
/** The reason does not change the figures, so they are shown before it is written. */
const reasonOf = ({ reason, on }: Values) => ({ reason: said(reason) ? reason : 'Not said yet', on });

const Insists = ({ contract }: { contract: Contract }) =>
  contract.isInKind ? <FlagInput source="insists" label="No makegood could be agreed: credit it in money all the same" /> : null;

export function CreditReadsButton({ contract }: { contract: Contract }) {
  const path = `/contracts/${contract.id}/credits`;
  const body = (values: Values) => ({ ...readsOf(contract, values), ...reasonOf(values), ...(contract.isInKind ? { insists: values['insists'] === true } : {}) });
  return (
    <CommandButton
      label="Credit reads"
      title="Credit reads that were not given"
      explains="They are no longer owed, and their value comes off: first what was not billed yet, then by a credit memo."
      path={path}
      defaults={{ count: 1, on: today() }}
      body={body}
      success="The reads are credited."
      wide
    >
      <ReadsFields contract={contract} />
      <DayInput source="on" label="On" required />
      <ReasonInput helperText="Stands on the credit memo." />
      <Insists contract={contract} />
      <ForeseenWords path={path} body={(values) => (named(contract, values) ? body(values) : null)} />
    </CommandButton>
  );
}

export function AllowanceButton({ contract }: { contract: Contract }) {
  const path = `/contracts/${contract.id}/allowances`;
  const body = (values: Values) => ({ amountCents: values['amountCents'], ...reasonOf(values), ...(contract.isInKind ? { insists: values['insists'] === true } : {}) });
  return (
    <CommandButton
      label="Give an allowance"
      title="Give an allowance on reads already given"
      explains="A concession for the past: the reads stay given and their revenue stays, and the allowance stands against it."
      path={path}
      defaults={{ on: today() }}
      body={body}
      success="The allowance is given."
      wide
    >
      <MoneyInput source="amountCents" label="Amount before tax" required />
      <DayInput source="on" label="On" required />
      <ReasonInput helperText="Stands on the credit memo." />
      <Insists contract={contract} />
      <ForeseenWords path={path} body={(values) => (typeof values['amountCents'] === 'number' && values['amountCents'] > 0 ? body(values) : null)} />
    </CommandButton>
  );
}

export function ForfeitButton({ contract }: { contract: Contract }) {
  const path = `/contracts/${contract.id}/forfeits`;
  const body = (values: Values) => ({ ...readsOf(contract, values), ...reasonOf(values), notice: said(values['notice']) ? values['notice'] : 'Not said yet' });
  return (
    <CommandButton
      label="Forfeit reads"
      title="Reads the sponsor has forfeited"
      explains="They are no longer owed and their value is kept. The contract must say so, and the sponsor must have had notice."
      path={path}
      defaults={{ count: 1, on: today() }}
      body={body}
      confirmLabel="Forfeit them"
      success="The reads are forfeited."
      color="warning"
      wide
    >
      <ReadsFields contract={contract} />
      <DayInput source="on" label="On" required />
      <WordsInput source="reason" label="By which clause of the contract" longest={500} lines={2} required />
      <WordsInput source="notice" label="What notice was given, and when" longest={500} lines={2} required />
      <ForeseenWords path={path} body={(values) => (named(contract, values) ? body(values) : null)} />
    </CommandButton>
  );
}

export function OverbillingButton({ contract }: { contract: Contract }) {
  const path = `/contracts/${contract.id}/overbilling-credits`;
  return (
    <CommandButton
      label="Credit what was overbilled"
      title="Credit what was billed beyond the reads that count"
      explains="Reads that were billed were taken back later. The next invoice would net it; a credit memo gives it back now."
      path={path}
      defaults={{ on: today() }}
      body={reasonOf}
      success="The credit memo is written."
      wide
    >
      <DayInput source="on" label="On" required />
      <ReasonInput helperText="Stands on the credit memo." />
      <ForeseenWords path={path} body={reasonOf} />
    </CommandButton>
  );
}

export function MinimumButton({ contract }: { contract: Contract }) {
  const path = `/contracts/${contract.id}/minimum-claims`;
  const body = ({ on }: Values) => ({ on });
  return (
    <CommandButton label="Claim the least amount" title="Claim the least amount agreed" explains="At the end of the term: what the least amount exceeds the reads given by is taken into the books and billed." path={path} defaults={{ on: today() }} body={body} success="The least amount is in the books." wide>
      <DayInput source="on" label="On" required />
      <ForeseenWords path={path} body={body} />
    </CommandButton>
  );
}
