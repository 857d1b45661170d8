import { moneyText } from '../format/money.ts';
import { Facts } from '../show/facts.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import { SeasonName } from './season-name.tsx';
import type { RateCardLine } from './types.ts';

export const RateShow = () => (
  <ShowPage<RateCardLine> title={(line) => `Price of ${line.readKindName ?? line.benefitName}`}>
    {(line) => (
      <Section title="Price">
        <Facts facts={[['For', line.readKindName ?? line.benefitName], ['Season', <SeasonName key="season" id={line.seasonId} />], ['Price of one', moneyText(line.priceCents)]]} />
      </Section>
    )}
  </ShowPage>
);
