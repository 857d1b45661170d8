import { Actions, CommandButton } from '../forms/command-button.tsx';
import { dayText, today } from '../format/day.ts';
import { DayInput } from '../inputs/day-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { iMay } from '../session/rights.ts';
import type { MakegoodProposal } from './types.ts';

const WHAT_FOLLOWS: Record<MakegoodProposal['remedy'], string> = {
  moreReads: 'The reads are agreed and take free places on the nights to come; what finds none is placed later.',
  otherKind: 'The reads are agreed and take free places on the nights to come; what finds none is placed later.',
  credit: 'The reads are no longer owed. What was not billed yet comes off first, the rest by a credit memo.',
  carryOver: 'The reads go on into the contract that follows, with their value. Where none is signed yet they wait for it.',
};

const Answered = () => (
  <>
    <WordsInput source="name" label="Who answered for the sponsor" longest={120} required />
    <DayInput source="on" label="On" required />
    <WordsInput source="note" label="What was said" longest={500} lines={2} />
  </>
);

const without = ({ note, ...values }: Record<string, unknown>) => ({ ...values, ...(note ? { note } : {}) });

function Answers({ proposal }: { proposal: MakegoodProposal }) {
  const path = `/makegood-proposals/${proposal.id}`;
  return (
    <>
      <CommandButton label="Record that it is accepted" title="The sponsor accepts" explains={`${proposal.words} ${WHAT_FOLLOWS[proposal.remedy]}`} path={`${path}/accept`} version={proposal.version} defaults={{ on: today() }} body={without} confirmLabel="It is accepted" success="The sponsor’s yes is recorded." variant="contained">
        <Answered />
      </CommandButton>
      <CommandButton label="Record that it is declined" title="The sponsor declines" explains="The reads stay owed, and something else may be proposed for them." path={`${path}/decline`} version={proposal.version} defaults={{ on: today() }} body={without} confirmLabel="It is declined" success="The sponsor’s no is recorded.">
        <Answered />
      </CommandButton>
    </>
  );
}

/** What may be done with a proposal as it stands. */
export function Decide({ proposal }: { proposal: MakegoodProposal }) {
  if (!iMay('makegood-proposals', 'edit')) return null;
  const path = `/makegood-proposals/${proposal.id}`;
  if (proposal.standing === 'waitingForContract') {
    return (
      <Actions>
        <CommandButton label="Carry them over now" title="Carry the reads over" explains="They go on into the contract that follows this one, once it is signed." path={`${path}/settle`} version={proposal.version} body={() => ({})} success="The reads are carried over." variant="contained" />
        <CommandButton label="Withdraw" title="Withdraw what was agreed?" explains="No contract has come that they could go into. The reads stay owed, and something else may be proposed for them." path={`${path}/withdraw`} version={proposal.version} body={() => ({})} confirmLabel="Withdraw it" success="The proposal is withdrawn." />
      </Actions>
    );
  }
  if (proposal.standing !== 'open' && proposal.standing !== 'waitingForAnswer') return null;
  return (
    <Actions>
      {proposal.standing === 'open' && (
        <CommandButton label="Show it to the sponsor" title="Show it to the sponsor" explains="Whoever opens the sponsor’s link sees it and may accept or decline it there." path={`${path}/show`} version={proposal.version} body={({ answerBy }) => ({ answerBy: answerBy || null })} success="The sponsor sees it by its link." variant="contained">
          <DayInput source="answerBy" label="Answer by" helperText="After that day the link takes no answer any more" />
        </CommandButton>
      )}
      <Answers proposal={proposal} />
      <CommandButton label="Withdraw" title="Withdraw this proposal?" explains={proposal.shownOn ? `The sponsor has seen it since ${dayText(proposal.shownOn)} and no longer will. Its reads may stand in another proposal.` : 'Its reads may stand in another proposal.'} path={`${path}/withdraw`} version={proposal.version} body={() => ({})} confirmLabel="Withdraw it" success="The proposal is withdrawn." />
    </Actions>
  );
}
