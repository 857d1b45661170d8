import { Alert } from '@mui/material';
import { useServer } from '../api/use-server.ts';
import { Go } from '../fields/go.tsx';
import { Tag } from '../fields/tag.tsx';
import { dayText, daysText } from '../format/day.ts';
import { iMay } from '../session/rights.ts';
import { Facts } from '../show/facts.tsx';
import { PaperButton } from '../show/paper-button.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import { Benefits, ChangesAndAccount, NightByNight, Pace, PromisedAndGiven } from './content-sheets.tsx';
import { IssueStatementButton } from './issue-button.tsx';
import { contractName, paperName } from './list.tsx';
import { StatementState } from './state.tsx';
import type { StatementCheck, WholePerformanceStatement } from './types.ts';

/** Whether the head on the paper still stands in the books. */
function Checked({ id }: { id: string }) {
  const { data, error } = useServer<StatementCheck>(`/performance-statements/${id}/check`);
  if (error) return <>{error.message}</>;
  if (!data) return <>Looking in the books…</>;
  return <><Tag mood={data.isVerified ? 'good' : 'bad'}>{data.isVerified ? 'Verified against the books.' : 'Does not agree with the books.'}</Tag> {data.words}</>;
}

function Standing({ statement }: { statement: WholePerformanceStatement }) {
  if (statement.replacedBy) return <Alert severity="warning" icon={false} sx={{ mb: 2 }}><StatementState statement={statement} />. Its paper bears a stamp that says so.</Alert>;
  if (!statement.isOutOfDate) return null;
  return <Alert severity="warning" icon={false} sx={{ mb: 2 }}>The books have changed since this statement was issued: they say something else of the same days. Issue the next.</Alert>;
}

export const StatementShow = () => (
  <ShowPage<WholePerformanceStatement>
    title={(one) => `Statement ${one.number}, ${one.sponsorName}`}
    canEdit={false}
    actions={(one) => (
      <>
        <PaperButton path={`/performance-statements/${one.id}/statement.pdf`} name={paperName(one)} isFirst={!one.isOutOfDate} />
        {!one.replacedBy && iMay('performance-statements', 'create') && <IssueStatementButton contractId={one.contractId} />}
      </>
    )}
  >
    {(one) => one.content && (
      <>
        <Standing statement={one} />
        <Section title="Statement of performance">
          <Facts
            facts={[
              ['State', <StatementState key="state" statement={one} />],
              ['Sponsor', <Go key="sponsor" resource="sponsors" id={one.sponsorId}>{one.sponsorName}</Go>],
              ['Contract', <Go key="contract" resource="contracts" id={one.contractId}>{contractName(one)}</Go>],
              ['School', one.content.head.schoolName],
              ['Seller of record', one.content.head.sellerName],
              ['Season', `${one.content.head.seasonName}, ${daysText(one.content.head.startsOn, one.content.head.endsOn)}`],
              ['Told through', dayText(one.throughOn)],
              ['Issued', `${dayText(one.issuedOn)}, ${one.issuedByName ?? 'from the command line'}`],
              ['Seal', `${one.sealNumber}, head ${one.sealHead}`],
              ['Against the books', <Checked key="check" id={one.id} />],
            ]}
          />
        </Section>
        <PromisedAndGiven content={one.content} />
        <Pace content={one.content} />
        <Benefits content={one.content} />
        <NightByNight content={one.content} />
        <ChangesAndAccount content={one.content} />
      </>
    )}
  </ShowPage>
);
