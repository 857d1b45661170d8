import { Alert } from '@mui/material';
import { Figures } from '../../show/figures.tsx';
import { Section } from '../../show/section.tsx';
import { count, numberText } from '../../words/count.ts';
import type { Fulfillment } from './types.ts';
import { chanceOfContract } from './words.ts';

/** The whole contract in figures. What is nothing is left out, save what everybody looks for. */
export function SumSection({ fulfillment }: { fulfillment: Fulfillment }) {
  const { sum, planned, shortfall, state } = fulfillment;
  const rest = ([['Credited', sum.credited], ['Released', sum.released], ['Carried over', sum.carried], ['Extra', sum.extra], ['Logged, not signed off', sum.loggedNotSignedOff]] as const).filter(([, number]) => number !== 0);
  return (
    <Section title="Fulfillment" lead="From the ledgers, the log and the calendar alone.">
      <Figures
        figures={[
          { label: 'Promised', value: numberText(sum.promised) },
          { label: 'Given', value: numberText(sum.given) },
          { label: 'Made good', value: numberText(sum.madeGood) },
          { label: 'Still owed', value: numberText(sum.owed) },
          { label: 'Planned', value: numberText(planned), note: 'for games to come' },
          ...rest.map(([label, number]) => ({ label, value: numberText(number) })),
          ...(state === 'signed' ? [{ label: 'Chance that all is given', value: chanceOfContract(fulfillment) }] : []),
        ]}
      />
      {shortfall > 0 && (
        <Alert severity="warning" icon={false}>
          {count(shortfall, 'read')} can no longer be given as promised. Propose a makegood, a credit or a carry-over under “Missed reads and credits”.
        </Alert>
      )}
    </Section>
  );
}
