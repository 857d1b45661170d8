import { Box, Button, Typography } from '@mui/material';
import { useRef, useState } from 'react';
import { useRecordContext } from 'react-admin';
import { useFormContext, useWatch } from 'react-hook-form';
import { SPANISH_EXAMPLES } from '../../server/domain/packet/default-scripts-spanish.ts';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { LANGUAGES } from '../words/choices.ts';
import { InsertBar } from './insert-bar.tsx';
import { NightChoice } from './night-choice.tsx';
import { PreviewSheet } from './preview-sheet.tsx';
import type { Script } from './types.ts';
import { usePreview } from './use-preview.ts';
import { goToLine, insertInto, WordsBox } from './words-box.tsx';

function SpanishExample() {
  const script = useRecordContext<Script>();
  const { setValue } = useFormContext();
  const secondText = useWatch({ name: 'secondText' }) as string | null;
  const example = script?.cameAs ? SPANISH_EXAMPLES[script.cameAs] : undefined;
  if (!example || secondText) return null;
  const take = () => {
    setValue('secondLanguage', 'es', { shouldDirty: true });
    setValue('secondText', example, { shouldDirty: true });
  };
  return <Button variant="outlined" onClick={take} sx={{ mb: 1 }}>Take the Spanish example</Button>;
}

/** The words of a script in one or two languages, what can be put into them, and how they come out. */
export function ScriptEditor() {
  const boxes = { first: useRef<HTMLTextAreaElement>(null), second: useRef<HTMLTextAreaElement>(null) };
  const [active, setActive] = useState<'first' | 'second'>('first');
  const [nightId, setNightId] = useState('');
  const [text, secondText, language, secondLanguage, moment] = useWatch({ name: ['text', 'secondText', 'language', 'secondLanguage', 'moment'] }) as (string | null | undefined)[];
  const languages = { language: (language ?? 'en') as 'en' | 'es', secondLanguage: (secondLanguage || null) as 'en' | 'es' | null };
  const shown = usePreview({ text: text ?? '', secondText: secondText || null, ...languages, moment: moment || null, nightId: nightId || null });
  return (
    <Box sx={{ display: 'grid', width: '100%', gap: 3, gridTemplateColumns: { xs: 'minmax(0, 1fr)', lg: 'minmax(0, 1fr) minmax(0, 1fr)' }, alignItems: 'start' }}>
      <Box sx={{ minWidth: 0 }}>
        <WordsBox source="text" label="Words" box={boxes.first} onFocus={() => setActive('first')} language={languages.language} isRequired helperText="What is said. An empty line begins a new paragraph." />
        <InsertBar onInsert={(words) => insertInto(boxes[active].current, words)} />
        <Typography variant="h3" sx={{ mt: 2 }}>Second language</Typography>
        <ChoiceInput source="secondLanguage" label="Second language" choices={LANGUAGES} helperText="The same message once more; both are one reading" />
        <SpanishExample />
        {languages.secondLanguage && <WordsBox source="secondText" label="Words in the second language" box={boxes.second} onFocus={() => setActive('second')} language={languages.secondLanguage} />}
      </Box>
      <Box component="section" aria-label="How it comes out" sx={{ minWidth: 0, p: { xs: 0, lg: 1.5 }, borderLeft: { lg: 1 }, borderColor: { lg: 'divider' } }}>
        <Typography variant="h3">How it comes out</Typography>
        <NightChoice value={nightId} onChange={setNightId} />
        <PreviewSheet {...shown} {...languages} onLine={(box, line) => goToLine(boxes[box].current, line)} />
      </Box>
    </Box>
  );
}
