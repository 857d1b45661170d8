import { dayText } from '../format/day.ts';
import { instantText } from '../format/instant.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import type { Copy, CopyVersion } from './types.ts';

interface Answer {
  id: string;
  version: string;
  answer: string;
  who: string;
  when: string;
  how: string;
  note: string;
}

const HOW: Record<string, string> = { link: 'By link', recordedByDirector: 'Recorded by the director' };

function answersOf(version: CopyVersion): Answer[] {
  const asked = version.changeAskedAt
    ? [{ id: `${version.id}-asked`, version: String(version.number), answer: 'Asked for a change', who: version.changeAskedByName ?? '', when: instantText(version.changeAskedAt), how: 'By link', note: version.changeNote ?? '' }]
    : [];
  const approved = version.approvedOn
    ? [{ id: version.id, version: String(version.number), answer: 'Approved', who: version.approvedByName ?? '', when: dayText(version.approvedOn), how: HOW[version.approvedHow ?? ''] ?? '', note: version.approvalNote ?? '' }]
    : [];
  return [...approved, ...asked];
}

/** Who said yes to which words, when, and how the school knows; who asked for others; who stopped them. */
export function ApprovalLog({ copy }: { copy: Copy }) {
  const stopped: Answer[] = copy.stoppedAt
    ? [{ id: 'stopped', version: 'All', answer: 'Stopped', who: copy.stoppedByName ?? '', when: instantText(copy.stoppedAt), how: 'Recorded by the director', note: copy.stoppedBecause ?? '' }]
    : [];
  const rows = [...stopped, ...copy.versions.toSorted((a, b) => b.number - a.number).flatMap(answersOf)];
  if (rows.length === 0) return <EmptyList>Nobody has answered yet. Give the sponsor a link, or record what you heard.</EmptyList>;
  return (
    <Rows<Answer>
      label="Answers to this copy"
      rows={rows}
      columns={[
        { label: 'Answer', show: (row) => row.answer },
        { label: 'Version', show: (row) => row.version },
        { label: 'Who', show: (row) => row.who },
        { label: 'When', show: (row) => row.when },
        { label: 'How', show: (row) => row.how },
        { label: 'Note', show: (row) => row.note },
      ]}
    />
  );
}
