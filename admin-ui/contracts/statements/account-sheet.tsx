import { useServer } from '../../api/use-server.ts';
import { Whole } from '../../fields/whole.tsx';
import { dayText } from '../../format/day.ts';
import { moneyText } from '../../format/money.ts';
import { EmptyList } from '../../lists/empty-list.tsx';
import { Rows } from '../../lists/rows.tsx';
import { Reading } from '../../show/reading.tsx';
import { Section } from '../../show/section.tsx';
import type { Contract } from '../types.ts';
import { CauseLink } from './cause-link.tsx';
import type { AccountLine } from './types.ts';

const signed = (cents: number | undefined): string => (!cents ? '–' : `${cents > 0 ? '+' : ''}${moneyText(cents)}`);

/** The sponsor's dollars, happening by happening, newest first. */
export function AccountSheet({ contract }: { contract: Contract }) {
  const asked = useServer<{ lines: AccountLine[] }>(`/contracts/${contract.id}/account-statement`);
  return (
    <Section title="Account statement" lead="Newest first. How revenue is shown in the district’s own books is for the business office to decide.">
      <Reading of={asked}>
        {({ lines }) =>
          lines.length === 0 ? (
            <EmptyList>No money has moved yet. Lines come with signing, sign-off, invoices and payments.</EmptyList>
          ) : (
            <Rows<AccountLine>
              label="Account statement"
              rows={lines}
              columns={[
                { label: 'What happened', show: (line) => line.sentence },
                { label: 'Day', show: (line) => <Whole>{dayText(line.occurredOn, 'weekday')}</Whole> },
                { label: 'Billed', numeric: true, show: (line) => signed(line.amounts['billed']) },
                { label: 'Earned', numeric: true, show: (line) => signed(line.amounts['earned']) },
                { label: 'Unpaid', numeric: true, show: (line) => signed(line.amounts['receivable']) },
                { label: 'Unpaid after', numeric: true, show: (line) => moneyText(line.after['receivable'] ?? 0) },
                { label: 'Because of', show: (line) => <CauseLink cause={line.cause} /> },
              ]}
            />
          )
        }
      </Reading>
    </Section>
  );
}
