import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { instantText } from '../format/instant.ts';
import { iMay } from '../session/rights.ts';
import { Facts } from '../show/facts.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import { AnswerButton } from './answer-button.tsx';
import { DisputeState } from './columns.tsx';
import type { ReadDispute } from './types.ts';

const Actions = ({ dispute }: { dispute: ReadDispute }) => (dispute.outcome === null && iMay('read-disputes', 'edit') ? <AnswerButton dispute={dispute} /> : null);

/** One question of a sponsor, and its answer. */
export const ReadDisputeShow = () => (
  <ShowPage<ReadDispute> title={(dispute) => `Question of ${dispute.sponsorName}`} canEdit={false} actions={(dispute) => <Actions dispute={dispute} />}>
    {(dispute) => (
      <>
        <Section title="What was asked">
          <Facts
            facts={[
              ['State', <DisputeState key="state" dispute={dispute} />],
              ['Question', dispute.what],
              ['Asked', `${instantText(dispute.askedAt)} by ${dispute.askedByName}`],
              ['Read', [dispute.readKindName, dispute.windowName].filter(Boolean).join(', ')],
              ['In the log', dispute.entryId ? 'Yes, as a read that was given' : 'No: the sponsor misses it'],
              ['Night', <Go key="night" to={`/nights/${dispute.nightId}/show?tab=log`}>{[dayText(dispute.heldOn), dispute.gameLabel].filter(Boolean).join(', ')}</Go>],
              ['Contract', <Go key="contract" to={`/contracts/${dispute.contractId}/show?tab=credits`}>{dispute.contractNumber ?? 'The contract'}</Go>],
            ]}
          />
        </Section>
        {dispute.answer && (
          <Section title="What the sponsor was told" lead={dispute.answer}>
            <Facts facts={[['Answered', dispute.answeredAt && `${instantText(dispute.answeredAt)}${dispute.answeredByName ? ` by ${dispute.answeredByName}` : ''}`], ['Makegood', dispute.outcome === 'makegood' && <Go key="propose" to={`/contracts/${dispute.contractId}/show?tab=credits`}>Propose it on the contract</Go>]]} />
          </Section>
        )}
      </>
    )}
  </ShowPage>
);
