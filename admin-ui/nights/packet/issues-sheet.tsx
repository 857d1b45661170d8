import { Box } from '@mui/material';
import { useServer } from '../../api/use-server.ts';
import { Tag } from '../../fields/tag.tsx';
import { instantText } from '../../format/instant.ts';
import { Rows } from '../../lists/rows.tsx';
import { iMay } from '../../session/rights.ts';
import { Reading } from '../../show/reading.tsx';
import { Section } from '../../show/section.tsx';
import { count } from '../../words/count.ts';
import type { Issue, Night } from '../types.ts';
import { PaperButton } from './pdf-link.tsx';

const REASONS = { first: 'The first', change: 'Something changed', choice: 'A family’s choice' } as const;

function State({ issue }: { issue: Issue }) {
  if (issue.erasedAt !== null) return <Tag mood="plain">Words erased {instantText(issue.erasedAt)}</Tag>;
  if (issue.isSealed) return <Tag mood="bad">Sealed: it names a student whose family has since chosen otherwise</Tag>;
  if (issue.isCurrent) return <Tag mood="good">Current</Tag>;
  return <Tag mood="plain">Replaced or out of date</Tag>;
}

function Papers({ night, issue }: { night: Night; issue: Issue }) {
  if (issue.erasedAt !== null || (issue.isSealed && !iMay('rosters', 'edit'))) return <>–</>;
  return (
    <Box sx={{ display: 'flex', gap: 1, flexWrap: 'wrap' }}>
      {issue.changes !== null && <PaperButton night={night} kind="change-set" number={issue.number} label={`Change set ${issue.number}`} />}
      <PaperButton night={night} kind="packet" number={issue.number} label={`Whole packet ${issue.number}`} />
    </Box>
  );
}

const what = (issue: Issue): string => issue.sentence ?? (issue.pageCount === null ? 'Pages were not kept in those days' : count(issue.pageCount, 'page'));

/** Every issue of the night's packet: who gave it out, when, why, and what to do with the binder. */
export function IssuesSheet({ night }: { night: Night }) {
  const asked = useServer<{ data: Issue[] }>(`/nights/${night.id}/packet-issues`);
  if (night.packetIssued === null) return null;
  return (
    <Section title="Issues" lead="What was issued stays as it was. A change set holds only the pages that differ from the issue before, behind a cover that says which to swap, add and take out.">
      <Reading of={asked}>
        {({ data }) => (
          <Rows<Issue>
            label="Issues of the packet"
            rows={data}
            columns={[
              { label: 'Packet', show: (issue) => <strong>Packet {issue.number}</strong> },
              { label: 'Issued', show: (issue) => `${instantText(issue.recordedAt)}${issue.issuedByName === null ? '' : `, ${issue.issuedByName}`}` },
              { label: 'Why', show: (issue) => (issue.reason === null ? '–' : REASONS[issue.reason]) },
              { label: 'Pages', show: what },
              { label: 'State', show: (issue) => <State issue={issue} /> },
              { label: 'Print', show: (issue) => <Papers night={night} issue={issue} /> },
            ]}
          />
        )}
      </Reading>
    </Section>
  );
}
