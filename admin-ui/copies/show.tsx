import { Go } from '../fields/go.tsx';
import { Tag } from '../fields/tag.tsx';
import { instantText } from '../format/instant.ts';
import { iMay } from '../session/rights.ts';
import { Facts } from '../show/facts.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import { NewLinkButton } from '../links/new-link-button.tsx';
import { ApprovalLog } from './approval-log.tsx';
import { CopyState } from './state.tsx';
import { NewVersionButton } from './new-version-button.tsx';
import { StopButton } from './stop-button.tsx';
import type { Copy } from './types.ts';
import { VersionView } from './version-view.tsx';
import { WordsCaution } from './words-caution.tsx';

function Actions({ copy }: { copy: Copy }) {
  if (!iMay('copies', 'edit') || copy.state === 'stopped') return null;
  return (
    <>
      <NewVersionButton copy={copy} />
      <NewLinkButton sponsorId={copy.sponsorId} sponsorName={copy.sponsorName} />
      <StopButton copy={copy} />
    </>
  );
}

const NeutralLine = ({ copy }: { copy: Copy }) => (
  <>
    {copy.fallbackText}
    {copy.fallbackMarks.length > 0 && <><br /><Tag mood="care">Not neutral: the copy check marks {copy.fallbackMarks.map((mark) => `“${mark.words}”`).join(', ')}</Tag></>}
  </>
);

export const CopyShow = () => (
  <ShowPage<Copy> title={(copy) => copy.title} actions={(copy) => <Actions copy={copy} />}>
    {(copy) => (
      <>
        <Section title="Copy">
          <Facts
            facts={[
              ['Sponsor', <Go key="sponsor" resource="sponsors" id={copy.sponsorId}>{copy.sponsorName}</Go>],
              ['Read kind', copy.readKindName],
              ['State', <CopyState key="state" state={copy.state} />],
              ['Stopped', copy.stoppedAt && `${instantText(copy.stoppedAt)}${copy.stoppedByName ? `, at the word of ${copy.stoppedByName}: ${copy.stoppedBecause}` : ''}`],
              ['Turns', copy.rotates ? 'Takes turns by game with the sponsor’s other copy of this kind' : 'Read at every game'],
              ['Neutral line', <NeutralLine key="neutral" copy={copy} />],
            ]}
          />
        </Section>
        <Section title="Versions">
          <WordsCaution />
          {[...copy.versions].sort((a, b) => b.number - a.number).map((version) => <VersionView key={version.id} copy={copy} version={version} />)}
        </Section>
        <Section title="Answers"><ApprovalLog copy={copy} /></Section>
      </>
    )}
  </ShowPage>
);
