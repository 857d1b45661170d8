import { EmptyList } from '../../lists/empty-list.tsx';
import { Rows } from '../../lists/rows.tsx';
import { Section } from '../../show/section.tsx';
import { numberText } from '../../words/count.ts';
import type { WindowFulfillment } from './types.ts';

/** How the windows of a night have served this contract. */
export function WindowsSection({ windows }: { windows: readonly WindowFulfillment[] }) {
  return (
    <Section title="By window" lead="Nights signed off, and what is planned for games to come.">
      {windows.length === 0 ? (
        <EmptyList>Nothing is read or planned yet.</EmptyList>
      ) : (
        <Rows<WindowFulfillment>
          label="Reads by window"
          rows={windows}
          keyOf={(window) => window.windowKind}
          columns={[
            { label: 'Window', show: (window) => window.windowName },
            { label: 'Was planned', numeric: true, show: (window) => numberText(window.planned) },
            { label: 'Given', numeric: true, show: (window) => numberText(window.given) },
            { label: 'Not read', numeric: true, show: (window) => numberText(window.notRead) },
            { label: 'Still planned', numeric: true, show: (window) => numberText(window.toCome) },
          ]}
        />
      )}
    </Section>
  );
}
