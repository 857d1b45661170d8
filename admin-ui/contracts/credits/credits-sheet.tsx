import { useGetList } from 'react-admin';
import { useServer } from '../../api/use-server.ts';
import type { ReadDispute } from '../../read-disputes/types.ts';
import { disputeColumns } from '../../read-disputes/columns.tsx';
import { creditMemoColumns } from '../../credit-memos/columns.tsx';
import type { CreditMemoView } from '../../credit-memos/types.ts';
import { Go } from '../../fields/go.tsx';
import { Actions } from '../../forms/command-button.tsx';
import { dayText } from '../../format/day.ts';
import { EmptyList } from '../../lists/empty-list.tsx';
import { Rows } from '../../lists/rows.tsx';
import type { MakegoodTrace } from '../../makegood-proposals/types.ts';
import { iMay } from '../../session/rights.ts';
import { Section } from '../../show/section.tsx';
import { count } from '../../words/count.ts';
import type { Contract } from '../types.ts';
import { AllowanceButton, CreditReadsButton, ForfeitButton, MinimumButton, OverbillingButton } from './credit-buttons.tsx';
import { MissedReads, ProposalsOfContract } from './missed-reads.tsx';
import { MakegoodButton } from './makegood-button.tsx';
import { owing } from './reads-fields.tsx';
import type { Makegood } from './types.ts';

function Buttons({ contract }: { contract: Contract }) {
  const owes = owing(contract).length > 0;
  const bills = iMay('invoices', 'create');
  if (contract.term.state === 'closed') return null;
  return (
    <Actions>
      {owes && iMay('contracts', 'edit') && <MakegoodButton contract={contract} />}
      {owes && bills && <CreditReadsButton contract={contract} />}
      {bills && <AllowanceButton contract={contract} />}
      {owes && bills && <ForfeitButton contract={contract} />}
      {bills && contract.standing.toBillCents < 0 && <OverbillingButton contract={contract} />}
      {bills && contract.term.billAtLeastCents !== null && <MinimumButton contract={contract} />}
    </Actions>
  );
}

const standOf = ({ replacements, placed, given, missed, settled }: Makegood): string =>
  given >= replacements ? `All given; ${count(settled, 'missed read')} settled` : `${given} of ${replacements} given, ${placed} placed; ${settled} of ${missed} settled`;

/** The nights of the reads that were given for it. */
function GivenOn({ trace }: { trace: MakegoodTrace | undefined }) {
  if (!trace || trace.replacements.length === 0) return <>–</>;
  return trace.replacements.map((read) => <div key={read.entryId}><Go resource="nights" id={read.nightId}>{dayText(read.heldOn)}</Go>{read.windowName ? `, ${read.windowName}` : ''}</div>);
}

function Makegoods({ contract }: { contract: Contract }) {
  const { data } = useServer<{ data: Makegood[] }>(`/contracts/${contract.id}/makegoods`);
  const { data: traces } = useServer<{ data: MakegoodTrace[] }>(`/contracts/${contract.id}/makegood-traces`);
  if (!data) return null;
  if (data.data.length === 0) return <EmptyList>None agreed. A read that was missed stays owed: read it on a later night, or agree with the sponsor on other reads instead.</EmptyList>;
  return (
    <Rows<Makegood>
      label="Makegoods of this contract"
      rows={data.data}
      columns={[
        { label: 'Missed', show: (one) => `${one.missed} × ${one.readKindName}${one.missedGamePlayedOn ? `, ${dayText(one.missedGamePlayedOn)}` : ''}` },
        { label: 'Instead', show: (one) => `${one.replacements} × ${one.replacementReadKindName}` },
        { label: 'Agreed', show: (one) => `${dayText(one.agreedOn)} with ${one.agreedWith}` },
        { label: 'State', show: standOf },
        { label: 'Given on', show: (one) => <GivenOn trace={traces?.data.find((trace) => trace.makegoodId === one.id)} /> },
      ]}
    />
  );
}

function Memos({ contract }: { contract: Contract }) {
  const { data = [], isPending } = useGetList<CreditMemoView>('credit-memos', { filter: { contractId: contract.id }, pagination: { page: 1, perPage: 100 }, sort: { field: 'issuedOn', order: 'DESC' } });
  if (isPending) return null;
  return data.length === 0 ? <EmptyList>Nothing that was billed has been credited.</EmptyList> : <Rows<CreditMemoView> label="Credit memos of this contract" rows={data} columns={creditMemoColumns} />;
}

function Disputes({ contract }: { contract: Contract }) {
  const { data = [] } = useGetList<ReadDispute>('read-disputes', { filter: { contractId: contract.id }, pagination: { page: 1, perPage: 100 }, sort: { field: 'askedAt', order: 'DESC' } });
  if (data.length === 0) return null;
  return <Section title="Asked by the sponsor"><Rows<ReadDispute> label="Questions about reads of this contract" rows={data} columns={disputeColumns} /></Section>;
}

/** What is done about reads that were not given, and what was credited. */
export const CreditsSheet = ({ contract }: { contract: Contract }) => (
  <>
    <Section title="Missed reads" lead={contract.isInKind ? 'This sponsor pays in goods, so a missed read is made good before it is credited.' : 'Make a missed read good, credit it, or leave it owed for a later night.'}>
      <Buttons contract={contract} />
      {!iMay('contract-changes', 'edit') && <p>The athletic director agrees makegoods and changes the contract.</p>}
    </Section>
    {contract.term.state !== 'draft' && <MissedReads contract={contract} />}
    <Section title="Proposed to the sponsor"><ProposalsOfContract contract={contract} /></Section>
    <Disputes contract={contract} />
    <Section title="Makegoods"><Makegoods contract={contract} /></Section>
    {iMay('credit-memos', 'list') && <Section title="Credit memos"><Memos contract={contract} /></Section>}
  </>
);
