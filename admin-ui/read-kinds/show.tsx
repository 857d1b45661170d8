import { RatesOfKind } from '../rate-card/rates-of-kind.tsx';
import { windowName } from '../seasons/sports.ts';
import { Facts } from '../show/facts.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import { TIMING_WORDS, wordFor } from '../words/choices.ts';
import { count } from '../words/count.ts';
import type { ReadKind } from './types.ts';

export const ReadKindShow = () => (
  <ShowPage<ReadKind> title={(kind) => kind.name}>
    {(kind) => (
      <>
        <Section title="Read kind">
          <Facts
            facts={[
              ['Read', wordFor(TIMING_WORDS, kind.timing)],
              ['What has to happen', kind.occurrence && wordFor({}, kind.occurrence)],
              ['Presented before the game', kind.presents],
              ['Windows', kind.windows.map(windowName).join(', ')],
              ['Length', count(kind.defaultSeconds, 'second')],
              ['In one game', count(kind.sponsorsPerGame, 'sponsor')],
              ['Shares places with', kind.placeGroup],
            ]}
          />
        </Section>
        <RatesOfKind readKindId={kind.id} />
      </>
    )}
  </ShowPage>
);
