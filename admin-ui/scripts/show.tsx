import { PrayerCaution } from '../department/prayer-caution.tsx';
import { Facts } from '../show/facts.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import { LANGUAGE_WORDS, wordFor } from '../words/choices.ts';
import { momentName } from './moments.ts';
import type { Script } from './types.ts';

export const ScriptShow = () => (
  <ShowPage<Script> title={(script) => script.title}>
    {(script) => (
      <Section title="Script">
        {script.moment === 'prayer' && <PrayerCaution />}
        <Facts
          facts={[
            ['Moment', momentName(script.moment)],
            ['Sport', script.sport ? wordFor({}, script.sport) : 'Every sport'],
            ['Language', wordFor(LANGUAGE_WORDS, script.language)],
            ['In packets', script.isOn ? 'Yes' : 'Left out'],
            ['Words', script.text],
          ]}
        />
      </Section>
    )}
  </ShowPage>
);
