import { Title } from 'react-admin';
import { useServer } from '../api/use-server.ts';
import { moneyText } from '../format/money.ts';
import { Figures } from '../show/figures.tsx';
import { Reading } from '../show/reading.tsx';
import { Section } from '../show/section.tsx';
import { count, numberText } from '../words/count.ts';
import { LateSheet } from './late-sheet.tsx';
import type { OpenItems } from './types.ts';
import { UnappliedSheet } from './unapplied-sheet.tsx';
import { WriteOffSheet } from './write-off-sheet.tsx';

/** What is late, what waits for its use, and what waits for the director. */
export function OpenMoneyPage() {
  const asked = useServer<OpenItems>('/open-money');
  return (
    <>
      <Title title="Open money" />
      <Reading of={asked}>
        {(items) => (
          <>
            <Section title="At a glance">
              <Figures
                figures={[
                  { label: 'Late', value: moneyText(items.lateCents), note: count(items.lateCount, 'invoice') },
                  { label: 'Not applied', value: moneyText(items.unappliedCents), note: count(items.unappliedCount, 'credit') },
                  { label: 'Write-offs to decide', value: numberText(items.writeOffsWaiting) },
                ]}
              />
            </Section>
            <WriteOffSheet requests={items.writeOffs} />
            <LateSheet groups={items.late} />
            <UnappliedSheet credits={items.unapplied} />
          </>
        )}
      </Reading>
    </>
  );
}
