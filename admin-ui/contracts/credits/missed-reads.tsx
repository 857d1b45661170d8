import { useServer } from '../../api/use-server.ts';
import { Go } from '../../fields/go.tsx';
import { Actions } from '../../forms/command-button.tsx';
import { dayText } from '../../format/day.ts';
import { EmptyList } from '../../lists/empty-list.tsx';
import { Rows } from '../../lists/rows.tsx';
import { ProposeButton } from '../../makegood-proposals/propose-button.tsx';
import { ProposalStanding, missedDay } from '../../makegood-proposals/standing.tsx';
import { ProposalTrace } from '../../makegood-proposals/trace.tsx';
import type { LineShortfall, MakegoodProposal, MissedRead } from '../../makegood-proposals/types.ts';
import { iMay } from '../../session/rights.ts';
import { Section } from '../../show/section.tsx';
import { count, numberText } from '../../words/count.ts';
import type { Contract } from '../types.ts';

interface MissedRow {
  read: MissedRead;
  reads: number;
}

/** Reads of which the log has nothing are alike: they stand in one row. */
function rowsOf(missed: readonly MissedRead[]): MissedRow[] {
  const rows = new Map<string, MissedRow>();
  for (const read of missed) {
    const key = read.placementId ?? [read.nightId, read.gameId, read.missedOn, read.why, read.proposalId, read.isOpen].join(' ');
    rows.set(key, { read, reads: (rows.get(key)?.reads ?? 0) + 1 });
  }
  return [...rows.values()];
}

const stateOf = (read: MissedRead) => {
  if (read.proposalId) return <Go resource="makegood-proposals" id={read.proposalId}>Proposed</Go>;
  return read.isOpen ? 'Still owed' : 'Given on another night or settled';
};

function leadOf({ owed, shortfall, awaiting, proposed }: LineShortfall): string {
  const short = shortfall === 0 ? 'The games left can still carry them.' : `${count(shortfall, 'read')} can no longer be given as promised.`;
  const agreed = awaiting > 0 ? ` ${count(awaiting, 'read')} agreed on and still to be made good.` : '';
  const put = proposed > 0 ? ` ${count(proposed, 'read')} in proposals.` : '';
  return `${count(owed, 'read')} owed. ${owed > awaiting ? short : ''}${agreed}${put}`.replace(/\s+/g, ' ').replace(/^./, (letter) => letter.toUpperCase());
}

function Line({ line, contract }: { line: LineShortfall; contract: Contract }) {
  const slots = [...new Set(line.missed.filter((read) => read.isOpen).map((read) => read.slotId))];
  return (
    <Section title={`Missed: ${line.readKindName}`} lead={leadOf(line)}>
      {line.missed.length > 0 && (
        <Rows<MissedRow>
          label={`Missed reads: ${line.readKindName}`}
          rows={rowsOf(line.missed)}
          keyOf={({ read }) => read.key}
          columns={[
            { label: 'Night', show: ({ read }) => <Go resource="nights" id={read.nightId}>{missedDay(read.nightId, read.missedOn)}</Go> },
            { label: 'Where', show: ({ read }) => [read.gameLabel, read.windowName].filter(Boolean).join(', ') || '–' },
            { label: 'Why', show: ({ read }) => read.why },
            { label: 'Reads', numeric: true, show: ({ reads }) => numberText(reads) },
            { label: 'State', show: ({ read }) => stateOf(read) },
          ]}
        />
      )}
      {iMay('makegood-proposals', 'edit') && slots.length > 0 && <Actions>{slots.map((slotId) => <ProposeButton key={slotId ?? ''} line={line} slotId={slotId} isInKind={contract.isInKind} />)}</Actions>}
    </Section>
  );
}

/** What was missed on a contract, line by line, and what may be proposed for it. */
export function MissedReads({ contract }: { contract: Contract }) {
  const { data } = useServer<{ data: LineShortfall[] }>(`/contracts/${contract.id}/shortfalls`);
  const lines = (data?.data ?? []).filter((line) => line.missed.length > 0 || line.shortfall > 0);
  return lines.map((line) => <Line key={line.commitmentId} line={line} contract={contract} />);
}

/** What was proposed on a contract, each missed read with what settled it. */
export function ProposalsOfContract({ contract }: { contract: Contract }) {
  const { data } = useServer<{ data: MakegoodProposal[] }>(`/contracts/${contract.id}/makegood-proposals`);
  if (!data) return null;
  if (data.data.length === 0) return <EmptyList>Nothing is proposed. Where a read was missed, a remedy may be put to the sponsor.</EmptyList>;
  return data.data.map((proposal) => (
    <Section key={proposal.id} title={`Proposed ${dayText(proposal.proposedOn)}`} lead={proposal.words} actions={<><ProposalStanding standing={proposal.standing} /><Go resource="makegood-proposals" id={proposal.id}>Open it</Go></>}>
      <ProposalTrace proposal={proposal} />
    </Section>
  ));
}
