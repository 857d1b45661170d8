import { Box, Typography } from '@mui/material';
import type { Cue } from '../../../server/domain/packet/packet.ts';
import { Tag } from '../../fields/tag.tsx';
import { windowName } from '../../seasons/sports.ts';

/** One cue: the words to be spoken, the directions between them, whose it is. */
export function CueView({ cue }: { cue: Cue }) {
  return (
    <Box component="li" sx={{ display: 'grid', gridTemplateColumns: { xs: '1fr', sm: '3rem 1fr' }, gap: { xs: 0, sm: 1.5 }, py: 1.5, borderTop: 1, borderColor: 'divider' }}>
      <Box className="tabular" sx={{ fontWeight: 700, fontSize: '1.125rem', color: 'text.secondary' }}>{cue.number}</Box>
      <Box sx={{ minWidth: 0, ...(cue.isSponsored ? { borderLeft: '5px solid #f2b134', pl: 1.5 } : {}) }}>
        <Typography variant="h3">
          {cue.title}
          <Box component="span" sx={{ color: 'text.secondary', fontWeight: 400 }}>
            {' '}· {cue.window ? `${windowName(cue.window)} · ` : ''}{Math.round(cue.seconds)} seconds
          </Box>
        </Typography>
        {cue.sponsorName && <Tag mood="plain">For {cue.sponsorName}{cue.sponsorSayAs ? `, say “${cue.sponsorSayAs}”` : ''}</Tag>}
        {cue.usesFallback && <div><Tag mood="care">No approved words; the neutral line is read</Tag></div>}
        {cue.caution && <Box component="p" sx={{ my: 0.5, color: 'warning.main' }}>{cue.caution}</Box>}
        {cue.segments.map((segment, place) =>
          segment.kind === 'direction' ? (
            <Box component="p" key={place} sx={{ m: 0, color: 'text.secondary', fontStyle: 'italic' }}>[{segment.text}]</Box>
          ) : (
            <Box component="p" key={place} lang={cue.language} sx={{ my: 0.5, fontSize: '1.0625rem', maxWidth: '68ch', whiteSpace: 'pre-line' }}>
              {segment.text}
              {segment.sayAs && <Box component="span" sx={{ color: 'text.secondary', fontStyle: 'italic' }}> say “{segment.sayAs}”</Box>}
            </Box>
          ),
        )}
      </Box>
    </Box>
  );
}
