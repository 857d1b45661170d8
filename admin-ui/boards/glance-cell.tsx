import { Box } from '@mui/material';
import { Link } from 'react-router';
import type { GlanceCell, GlanceState } from './types.ts';

const SIGNS: Record<GlanceState, string> = { done: '✓', mend: '✕', look: '!', ahead: '○', none: '' };
const INKS: Record<GlanceState, string> = { done: 'success.main', mend: 'error.main', look: 'warning.main', ahead: 'text.secondary', none: 'text.secondary' };

/** Said before the words where there are no colors and no signs to see. */
const SAID: Record<GlanceState, string> = { done: 'Done', mend: 'See to it', look: 'Worth a look', ahead: 'Still to do', none: 'Nothing to do' };

/** A sign and words, in color besides; it leads to where it is mended. */
export function CellWords({ cell, of }: { cell: GlanceCell; of: string }) {
  const { state, words, sentences, to } = cell;
  const ink = { color: INKS[state], fontWeight: state === 'mend' || state === 'look' ? 700 : 500, fontSize: '0.95rem' };
  if (state === 'none') return <Box component="span" sx={ink}><span aria-hidden="true">–</span><Box component="span" sx={HIDDEN}>{SAID.none}</Box></Box>;
  const inside = <><span aria-hidden="true">{SIGNS[state]}&nbsp;</span>{words}</>;
  if (to === null) return <Box component="span" sx={ink}>{inside}</Box>;
  const title = sentences.join(' ') || undefined;
  return <Box component={Link} to={to} title={title} aria-label={`${words}. ${SAID[state]}: ${of}`} sx={{ ...ink, textUnderlineOffset: 3, display: 'inline-flex', alignItems: 'center', minHeight: 28 }}>{inside}</Box>;
}

const HIDDEN = { position: 'absolute', width: '1px', height: '1px', overflow: 'hidden', clip: 'rect(0 0 0 0)', whiteSpace: 'nowrap' } as const;

/** What the signs stand for. */
export function Signs() {
  return (
    <Box component="p" sx={{ display: 'flex', flexWrap: 'wrap', columnGap: 2.5, rowGap: 0.5, m: 0, mb: 1.5, fontSize: '0.95rem' }}>
      {(['mend', 'look', 'ahead', 'done'] as const).map((state) => <Box key={state} component="span" sx={{ color: INKS[state], fontWeight: 600 }}><span aria-hidden="true">{SIGNS[state]}&nbsp;</span>{SAID[state]}</Box>)}
    </Box>
  );
}
