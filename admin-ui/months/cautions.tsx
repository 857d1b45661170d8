import { Go } from '../fields/go.tsx';
import { moneyText } from '../format/money.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { Section } from '../show/section.tsx';
import { count } from '../words/count.ts';
import type { Caution, MonthPage } from './types.ts';

const KINDS: Record<Caution['kind'], { what: string; one: string; to: string; advice: string }> = {
  undeposited: { what: 'Received and not deposited', one: 'payment', to: '/deposit-slips', advice: 'Money lay in the drawer when the month ended.' },
  unapplied: { what: 'Not applied to an invoice', one: 'credit', to: '/open-money', advice: 'Credits of payers that no invoice took yet.' },
  unbilled: { what: 'Earned and not billed', one: 'contract', to: '/billing-runs', advice: 'Reads were given for more than was billed; a billing run may be due.' },
};

export function Cautions({ month }: { month: MonthPage }) {
  return (
    <Section title="Also open on its last day">
      {month.cautions.length === 0 ? (
        <EmptyList>Nothing: all money is deposited and applied, and all that was earned is billed.</EmptyList>
      ) : (
        <Rows<Caution>
          label="Also open on its last day"
          rows={month.cautions}
          keyOf={(caution) => caution.kind}
          columns={[
            { label: 'What', show: (caution) => <Go to={KINDS[caution.kind].to}>{KINDS[caution.kind].what}</Go> },
            { label: 'How many', show: (caution) => count(caution.count, KINDS[caution.kind].one) },
            { label: 'Amount', numeric: true, show: (caution) => moneyText(caution.amountCents) },
            { label: 'Meaning', show: (caution) => KINDS[caution.kind].advice },
          ]}
        />
      )}
    </Section>
  );
}
