import { Box } from '@mui/material';
import type { Cue } from '../../../server/domain/packet/packet.ts';
import type { Segment } from '../../../server/domain/packet/segment.ts';
import { Tag } from '../../fields/tag.tsx';
import { secondsText } from './seconds-text.ts';

function Words({ language, segment }: { language: string; segment: Segment }) {
  if (segment.kind === 'direction') return <Box component="p" sx={{ m: 0, color: 'text.secondary', fontStyle: 'italic' }}>[{segment.text}]</Box>;
  return (
    <Box component="p" lang={language} sx={{ my: 0.5, fontSize: '1.0625rem', maxWidth: '68ch', whiteSpace: 'pre-line', overflowWrap: 'anywhere' }}>
      {segment.text}
      {segment.sayAs && <Box component="span" sx={{ color: 'text.secondary', fontStyle: 'italic' }}> say “{segment.sayAs}”</Box>}
    </Box>
  );
}

const LANGUAGES: Record<string, string> = { en: 'In English', es: 'In Spanish' };

function Opened({ cue }: { cue: Cue }) {
  return (
    <Box sx={{ pb: 1.5, pl: { sm: 4 } }}>
      {cue.caution && <Box component="p" sx={{ my: 0.5, color: 'warning.main' }}>{cue.caution}</Box>}
      {cue.segments.map((segment, place) => <Words key={place} language={cue.language} segment={segment} />)}
      {cue.second && (
        <Box sx={{ borderLeft: 3, borderColor: 'divider', pl: 1.5, mt: 1 }}>
          <Box component="p" sx={{ m: 0, color: 'text.secondary' }}>{LANGUAGES[cue.second.language] ?? cue.second.language}, with the first one reading · {secondsText(cue.second.seconds)}</Box>
          {cue.second.segments.map((segment, place) => <Words key={place} language={cue.second!.language} segment={segment} />)}
        </Box>
      )}
    </Box>
  );
}

/** One cue as a line of the run of show; opened, the words to be spoken and the directions between them. */
export function CueView({ cue, open }: { cue: Cue; open: boolean }) {
  return (
    <Box component="li" sx={{ borderTop: 1, borderColor: 'divider', ...(cue.isSponsored ? { borderLeft: '5px solid #f2b134', pl: 1.5 } : {}) }}>
      <details open={open}>
        <Box component="summary" sx={{ minHeight: 44, py: 1, cursor: 'pointer', overflowWrap: 'anywhere' }}>
          <Box component="span" className="tabular" sx={{ fontWeight: 700, mr: 1, whiteSpace: 'nowrap' }}>{cue.code}</Box>
          {cue.startsText && <Box component="span" className="tabular" sx={{ mr: 1, whiteSpace: 'nowrap' }}>{cue.startsText}</Box>}
          <strong>{cue.title}</strong>
          {cue.seconds >= 1 && <Box component="span" className="tabular" sx={{ color: 'text.secondary' }}> · {secondsText(cue.seconds)}</Box>}
          {cue.second && <Box component="span" sx={{ color: 'text.secondary' }}> · two languages</Box>}
          {cue.sponsorName && <> · <Tag mood="plain">for {cue.sponsorName}{cue.sponsorSayAs ? `, say “${cue.sponsorSayAs}”` : ''}</Tag></>}
          {cue.usesFallback && <> <Tag mood="care">No approved words; the neutral line is read</Tag></>}
          {cue.whoText && <Box component="span" sx={{ display: 'block', color: 'text.secondary' }}>{cue.whoText}</Box>}
        </Box>
        <Opened cue={cue} />
      </details>
    </Box>
  );
}
