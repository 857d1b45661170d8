import { moneyText } from '../format/money.ts';
import { Figures } from '../show/figures.tsx';
import { Section } from '../show/section.tsx';
import { numberText } from '../words/count.ts';
import type { Home } from './types.ts';

export function SeasonFigures({ figures }: { figures: Home['figures'] }) {
  return (
    <Section title="The season so far" lead="How revenue is shown in the district’s own books is for the business office to decide.">
      <Figures
        figures={[
          { label: 'Reads given', value: numberText(figures.givenReads) },
          { label: 'Reads owed', value: numberText(figures.owedReads) },
          { label: 'Signed', value: moneyText(figures.signedCents) },
          { label: 'Earned', value: moneyText(figures.earnedCents) },
          { label: 'Billed', value: moneyText(figures.billedCents) },
          { label: 'Unpaid', value: moneyText(figures.receivableCents) },
        ]}
      />
    </Section>
  );
}
