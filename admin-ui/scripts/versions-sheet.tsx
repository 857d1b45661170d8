import { Box, Typography } from '@mui/material';
import { wordDifference } from '../../server/domain/packet/word-difference.ts';
import { useServer } from '../api/use-server.ts';
import { CommandButton } from '../forms/command-button.tsx';
import { instantText } from '../format/instant.ts';
import { iMay } from '../session/rights.ts';
import { Reading } from '../show/reading.tsx';
import { Section } from '../show/section.tsx';
import type { Script, ScriptVersion } from './types.ts';

function Changed({ before, after, language }: { before: string; after: string; language: string }) {
  return (
    <Box component="p" lang={language} sx={{ whiteSpace: 'pre-wrap', overflowWrap: 'anywhere', maxWidth: '72ch', my: 0.5 }}>
      {wordDifference(before, after).map(({ kind, text }, place) =>
        kind === 'same' ? <span key={place}>{text}</span> : kind === 'gone' ? (
          <Box component="del" key={place} sx={{ color: 'error.main' }}>{text}</Box>
        ) : (
          <Box component="ins" key={place} sx={{ color: 'success.main', fontWeight: 700 }}>{text}</Box>
        ))}
    </Box>
  );
}

function Wording({ script, wording, before }: { script: Script; wording: ScriptVersion; before: ScriptVersion | undefined }) {
  const isPresent = wording.number === script.wordsNumber;
  const canBringBack = !isPresent && !script.isLocked && iMay('scripts', 'edit');
  return (
    <Box component="li" sx={{ borderTop: 1, borderColor: 'divider', py: 1.5 }}>
      <Typography variant="h3">Wording {wording.number}{isPresent ? ', read now' : ''}</Typography>
      <Box sx={{ color: 'text.secondary' }}>{wording.recordedAt === null || wording.recordedByName === null ? 'As it came' : `${instantText(wording.recordedAt)}, ${wording.recordedByName}`}</Box>
      <Changed before={before?.text ?? wording.text} after={wording.text} language={wording.language} />
      {(wording.secondText ?? before?.secondText) && <Changed before={before ? (before.secondText ?? '') : (wording.secondText ?? '')} after={wording.secondText ?? ''} language={wording.secondLanguage ?? 'es'} />}
      {canBringBack && (
        <CommandButton
          label="Bring it back"
          title={`Bring back wording ${wording.number}`}
          explains="These words become the newest wording; the present one stays in this list. An approval has to be given again."
          path={`/scripts/${script.id}/bring-back`}
          version={script.version}
          body={() => ({ number: wording.number })}
          success={`The words of wording ${wording.number} are back.`}
        />
      )}
    </Box>
  );
}

/** Each wording the script ever had, the newest first, with what changed from the one before. */
export function VersionsSheet({ script }: { script: Script }) {
  const asked = useServer<{ data: ScriptVersion[] }>(`/scripts/${script.id}/versions`);
  return (
    <Section title="Wordings" lead="What was taken out is struck through, what came in is bold and underlined.">
      <Reading of={asked}>
        {({ data }) => (
          <Box component="ol" sx={{ listStyle: 'none', p: 0, m: 0 }}>
            {data.map((wording, place) => <Wording key={wording.number} script={script} wording={wording} before={data[place + 1]} />)}
          </Box>
        )}
      </Reading>
    </Section>
  );
}
