import { useServer } from '../api/use-server.ts';
import { Go } from '../fields/go.tsx';
import { moneyText } from '../format/money.ts';
import { Rows } from '../lists/rows.tsx';
import { Section } from '../show/section.tsx';
import { count } from '../words/count.ts';
import { REMEDY_WORDS } from './standing.tsx';
import type { OpenShortfall } from './types.ts';

function cheapestOf({ cheapest }: OpenShortfall): string {
  if (!cheapest) return '–';
  const what = cheapest.remedy === 'otherKind' ? `${cheapest.replacements} × ${cheapest.readKindName}` : REMEDY_WORDS[cheapest.remedy];
  return cheapest.costCents === 0 ? `${what}, at no cost` : `${what}, ${moneyText(cheapest.costCents)}`;
}

/** What is short and waits for the director to propose something. */
export function OpenShortfalls() {
  const { data } = useServer<{ data: OpenShortfall[] }>('/open-shortfalls');
  const rows = data?.data ?? [];
  return (
    <>
      <p>What is put to a sponsor for reads that can no longer be given as promised. Nothing is booked before the sponsor has agreed.</p>
      {rows.length > 0 && (
        <Section title="Short, and nothing is proposed yet" lead="Open the contract to choose the reads and the remedy.">
          <Rows<OpenShortfall>
            label="Shortfalls without a proposal"
            rows={rows}
            keyOf={(row) => row.commitmentId}
            columns={[
              { label: 'Contract', show: (row) => <Go to={`/contracts/${row.contractId}/show?tab=credits`}>{[row.sponsorName, row.contractNumber].filter(Boolean).join(', ')}</Go> },
              { label: 'Short', show: (row) => `${count(row.open, 'read')}: ${row.readKindName}` },
              { label: 'What costs least', show: cheapestOf },
            ]}
          />
        </Section>
      )}
    </>
  );
}
