import { Box } from '@mui/material';
import type { Cue } from '../../../server/domain/packet/packet.ts';
import { Tag } from '../../fields/tag.tsx';
import { windowName } from '../../seasons/sports.ts';
import { count } from '../../words/count.ts';

function Words({ cue, segment }: { cue: Cue; segment: Cue['segments'][number] }) {
  if (segment.kind === 'direction') return <Box component="p" sx={{ m: 0, color: 'text.secondary', fontStyle: 'italic' }}>[{segment.text}]</Box>;
  return (
    <Box component="p" lang={cue.language} sx={{ my: 0.5, fontSize: '1.0625rem', maxWidth: '68ch', whiteSpace: 'pre-line' }}>
      {segment.text}
      {segment.sayAs && <Box component="span" sx={{ color: 'text.secondary', fontStyle: 'italic' }}> say “{segment.sayAs}”</Box>}
    </Box>
  );
}

/** One cue as a line of the list; opened, the words to be spoken and the directions between them. */
export function CueView({ cue, open }: { cue: Cue; open: boolean }) {
  return (
    <Box component="li" sx={{ borderTop: 1, borderColor: 'divider', ...(cue.isSponsored ? { borderLeft: '5px solid #f2b134', pl: 1.5 } : {}) }}>
      <details open={open}>
        <Box component="summary" sx={{ minHeight: 44, py: 1, cursor: 'pointer', overflowWrap: 'anywhere' }}>
          <Box component="span" className="tabular" sx={{ color: 'text.secondary', fontWeight: 700, mr: 1 }}>{cue.number}</Box>
          <strong>{cue.title}</strong>
          <Box component="span" sx={{ color: 'text.secondary' }}>
            {cue.window ? ` · ${windowName(cue.window)}` : ''}{cue.seconds >= 1 ? ` · ${count(Math.round(cue.seconds), 'second')}` : ''}
          </Box>
          {cue.sponsorName && <> <Tag mood="plain">For {cue.sponsorName}{cue.sponsorSayAs ? `, say “${cue.sponsorSayAs}”` : ''}</Tag></>}
          {cue.usesFallback && <> <Tag mood="care">No approved words; the neutral line is read</Tag></>}
        </Box>
        <Box sx={{ pb: 1.5, pl: { sm: 4 } }}>
          {cue.caution && <Box component="p" sx={{ my: 0.5, color: 'warning.main' }}>{cue.caution}</Box>}
          {cue.segments.map((segment, place) => <Words key={place} cue={cue} segment={segment} />)}
        </Box>
      </details>
    </Box>
  );
}
