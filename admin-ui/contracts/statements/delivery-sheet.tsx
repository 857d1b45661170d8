import { useServer } from '../../api/use-server.ts';
import { Whole } from '../../fields/whole.tsx';
import { dayText } from '../../format/day.ts';
import { EmptyList } from '../../lists/empty-list.tsx';
import { Rows } from '../../lists/rows.tsx';
import { Reading } from '../../show/reading.tsx';
import { Section } from '../../show/section.tsx';
import { numberText } from '../../words/count.ts';
import type { Contract } from '../types.ts';
import { CauseLink } from './cause-link.tsx';
import type { DeliveryLine } from './types.ts';

/** The sponsor's reads, happening by happening, newest first. */
export function DeliverySheet({ contract }: { contract: Contract }) {
  const asked = useServer<{ lines: DeliveryLine[] }>(`/contracts/${contract.id}/delivery-statement`);
  return (
    <Section title="Delivery statement" lead="Newest first. Each line names what caused it; what stands at its end is how the reads stood after it.">
      <Reading of={asked}>
        {({ lines }) =>
          lines.length === 0 ? (
            <EmptyList>Nothing has happened yet. The first line comes when the contract is signed, the next when a night with its reads is signed off.</EmptyList>
          ) : (
            <Rows<DeliveryLine>
              label="Delivery statement"
              rows={lines}
              columns={[
                { label: 'What happened', show: (line) => line.sentence },
                { label: 'Day', show: (line) => <Whole>{dayText(line.occurredOn, 'weekday')}</Whole> },
                { label: 'Read kind', show: (line) => line.readKindName ?? '–' },
                { label: 'Given after', numeric: true, show: (line) => numberText(line.after.given) },
                { label: 'Owed after', numeric: true, show: (line) => numberText(line.after.owed) },
                { label: 'Because of', show: (line) => <CauseLink cause={line.cause} /> },
              ]}
            />
          )
        }
      </Reading>
    </Section>
  );
}
