import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { missedDay } from './standing.tsx';
import type { MakegoodProposal, MissedReadTrace } from './types.ts';

function Missed({ read }: { read: MissedReadTrace }) {
  const where = [read.gameLabel, read.windowName].filter(Boolean).join(', ');
  return <><Go resource="nights" id={read.nightId}>{missedDay(read.nightId, read.missedOn)}</Go>{where && <>: {where}</>}</>;
}

function SettledBy({ read, proposal }: { read: MissedReadTrace; proposal: MakegoodProposal }) {
  const by = read.settledBy;
  if (by) return <><Go resource="nights" id={by.nightId}>{dayText(by.heldOn)}</Go>: {[by.gameLabel, by.windowName].filter(Boolean).join(', ')}</>;
  if (proposal.creditMemoId) return <Go resource="credit-memos" id={proposal.creditMemoId}>Credit memo {proposal.creditMemoNumber}</Go>;
  if (proposal.carriedToContractId) return <Go resource="contracts" id={proposal.carriedToContractId}>Contract {proposal.carriedToNumber ?? 'that follows'}</Go>;
  if (proposal.settledOn) return <>Came off what was still to bill, {dayText(proposal.settledOn)}</>;
  return <>Still to come</>;
}

/** Each missed read from its night to what settled it. */
export function ProposalTrace({ proposal }: { proposal: MakegoodProposal }) {
  if (proposal.missed.length === 0) return <EmptyList>Its missed reads are free again, and may stand in another proposal.</EmptyList>;
  return (
    <Rows<MissedReadTrace>
      label="From the missed read to what settles it"
      rows={proposal.missed}
      keyOf={(read) => String(read.place)}
      columns={[
        { label: 'Missed', show: (read) => <Missed read={read} /> },
        { label: 'Why', show: (read) => read.why },
        { label: 'Settled by', show: (read) => <SettledBy read={read} proposal={proposal} /> },
      ]}
    />
  );
}
