import { Alert } from '@mui/material';
import { useState } from 'react';
import { PrayerCaution } from '../department/prayer-caution.tsx';
import { dayText } from '../format/day.ts';
import { iMay } from '../session/rights.ts';
import { Facts } from '../show/facts.tsx';
import { PageTabs } from '../show/page-tabs.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import { LANGUAGE_WORDS, wordFor } from '../words/choices.ts';
import { ApproveScript, TurnScript } from './approve-button.tsx';
import { momentName, variantName } from './moments.ts';
import { NightChoice } from './night-choice.tsx';
import { PreviewSheet } from './preview-sheet.tsx';
import type { Script } from './types.ts';
import { usePreview } from './use-preview.ts';
import { VersionsSheet } from './versions-sheet.tsx';

function Out({ script }: { script: Script }) {
  const [nightId, setNightId] = useState('');
  const { text, secondText, language, secondLanguage, moment } = script;
  const shown = usePreview({ text, secondText, language, secondLanguage, moment, nightId: nightId || null });
  return (
    <Section title="How it comes out">
      <NightChoice value={nightId} onChange={setNightId} />
      <PreviewSheet {...shown} language={language} secondLanguage={secondLanguage} />
    </Section>
  );
}

function Words({ script }: { script: Script }) {
  return (
    <>
      <Section title="Script">
        {script.moment === 'prayer' && <PrayerCaution />}
        {script.isLocked && <Alert severity="info" icon={false} sx={{ mb: 1 }}>These words are the district’s own. They are written down with each venue and printed as they stand there; the library does not change them.</Alert>}
        <Facts
          facts={[
            ['Moment', momentName(script.moment)],
            ['Form', script.variant && variantName(script.variant)],
            ['Sport', script.sport ? wordFor({}, script.sport) : 'Every sport'],
            ['Language', [script.language, script.secondLanguage].filter(Boolean).map((one) => wordFor(LANGUAGE_WORDS, one)).join(', then ')],
            ['In packets', script.isOn ? 'Yes' : 'Left out'],
            ['Approved', script.approvedOn ? `${dayText(script.approvedOn)}, ${script.approvedByName ?? ''}` : 'Not yet'],
          ]}
        />
      </Section>
      <Out script={script} />
    </>
  );
}

export const ScriptShow = () => (
  <ShowPage<Script>
    title={(script) => script.title}
    canEdit={(script) => !script.isLocked}
    actions={(script) => !script.isLocked && iMay('scripts', 'edit') && <><ApproveScript script={script} /><TurnScript script={script} /></>}
  >
    {(script) => (
      <PageTabs
        label="Parts of the script"
        sheets={[
          { key: 'words', label: 'Words', content: () => <Words script={script} /> },
          { key: 'versions', label: 'Wordings', content: () => <VersionsSheet script={script} /> },
        ]}
      />
    )}
  </ShowPage>
);
