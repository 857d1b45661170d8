import { Alert } from '@mui/material';
import { moneyText } from '../format/money.ts';
import { Figures } from '../show/figures.tsx';
import { Section } from '../show/section.tsx';
import { count, numberText } from '../words/count.ts';
import type { Contract } from './types.ts';

/** Where the promise and the money stand today. */
export function StandingFigures({ contract }: { contract: Contract }) {
  const standing = contract.standing!;
  const canCount = standing.owed > 0 && contract.term.state === 'signed';
  const rest = ([['Made good', standing.madeGood], ['Credited', standing.credited], ['Released', standing.released], ['Carried over', standing.carried], ['Extra', standing.extra]] as const).filter(([, number]) => number !== 0);
  return (
    <>
      <Section title="Reads">
        <Figures
          figures={[
            { label: 'Promised', value: numberText(standing.promised) },
            { label: 'Given', value: numberText(standing.given) },
            { label: 'Still owed', value: numberText(standing.owed) },
            { label: 'Behind', value: numberText(standing.behind), note: standing.behind > 0 ? 'against what should be given by now' : 'on pace' },
            { label: 'Logged, not signed off', value: numberText(standing.loggedNotSignedOff) },
            ...rest.map(([label, number]) => ({ label, value: numberText(number) })),
          ]}
        />
        {standing.loggedNotSignedOff > 0 && (
          <Alert severity="info" icon={false}>{count(standing.loggedNotSignedOff, 'read')} logged on nights nobody has signed off yet. {canCount ? (standing.loggedNotSignedOff === 1 ? 'It counts once the night is signed off.' : 'They count once the nights are signed off.') : `${standing.loggedNotSignedOff === 1 ? 'It' : 'They'} would be extra and move no money.`}</Alert>
        )}
      </Section>
      <Section title="Money">
        <Figures
          figures={[
            { label: 'Price', value: contract.term.pricing === 'perRead' ? 'Per read' : moneyText(standing.priceCents) },
            { label: 'Billed', value: moneyText(standing.billedCents) },
            { label: 'To bill', value: moneyText(standing.toBillCents) },
            { label: 'Earned', value: moneyText(standing.earnedCents) },
            { label: 'Unpaid', value: moneyText(standing.receivableCents) },
          ]}
        />
      </Section>
    </>
  );
}
