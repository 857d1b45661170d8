import type { PlannedLine, PlannedState } from '../../../server/domain/night/tidy.ts';
import { Tag, type Mood } from '../../fields/tag.tsx';
import { EmptyList } from '../../lists/empty-list.tsx';
import { Rows } from '../../lists/rows.tsx';
import { Section } from '../../show/section.tsx';
import { windowName } from '../../seasons/sports.ts';

const STATES: Record<PlannedState, readonly [Mood, string]> = {
  read: ['good', 'Read'],
  readInAnotherWindow: ['good', 'Read in another window'],
  cutShortCounts: ['good', 'Cut short, counts'],
  cutShort: ['care', 'Cut short, does not count'],
  notRead: ['bad', 'Not read'],
  unlogged: ['bad', 'Nothing logged'],
  gameOff: ['plain', 'Game called off'],
};

/** Every read that was planned and what became of it; what is left over comes first. */
export function PlannedList({ planned }: { planned: readonly PlannedLine[] }) {
  const isLeft = (line: PlannedLine): boolean => ['notRead', 'unlogged', 'cutShort'].includes(line.state);
  const rows = [...planned.filter(isLeft), ...planned.filter((line) => !isLeft(line))];
  return (
    <Section title="What was planned">
      {rows.length === 0 ? <EmptyList>No sponsor read was planned for this night.</EmptyList> : (
        <Rows<PlannedLine>
          label="Planned reads"
          rows={rows}
          keyOf={(line) => line.placementId}
          columns={[
            { label: 'Sponsor', show: (line) => line.sponsorName },
            { label: 'Read', show: (line) => line.readKindName },
            { label: 'Game', show: (line) => line.gameLabel },
            { label: 'Window', show: (line) => windowName(line.windowKey) },
            { label: 'What became of it', show: (line) => <Tag mood={STATES[line.state][0]}>{STATES[line.state][1]}</Tag> },
            { label: 'Why', show: (line) => line.why ?? '–' },
          ]}
        />
      )}
    </Section>
  );
}
