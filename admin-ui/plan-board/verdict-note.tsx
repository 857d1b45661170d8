import { Box } from '@mui/material';
import { useBoardState } from './board-store.ts';

const WORDS = { good: '✓', care: '! Possible, but', bad: '✕ No:' } as const;
const WIDTH = 260;

/** What would become of the card in hand, in words, beside the window it is over. */
export function VerdictNote() {
  const verdict = useBoardState((state) => state.verdict);
  const to = useBoardState((state) => state.carried?.to ?? null);
  if (!verdict || !to) return null;
  const cell = document.querySelector(`[data-spot="${to.gameId} ${to.windowKey}"]`)?.getBoundingClientRect();
  if (!cell) return null;
  const left = cell.right + WIDTH + 12 > window.innerWidth ? Math.max(8, cell.left - WIDTH - 8) : cell.right + 8;
  return (
    <Box
      data-verdict={verdict.tone}
      sx={{
        position: 'fixed', left, top: Math.min(cell.top, window.innerHeight - 140), width: WIDTH, zIndex: 1200, pointerEvents: 'none', p: 1, borderRadius: 1, border: 2, boxShadow: 3,
        borderColor: verdict.tone === 'good' ? 'success.main' : verdict.tone === 'care' ? 'warning.main' : 'error.main', bgcolor: 'background.paper', color: 'text.primary', fontSize: '0.9rem', lineHeight: 1.3,
      }}
    >
      <b aria-hidden="true">{WORDS[verdict.tone]}</b> {verdict.sentences.join(' ')}
      {verdict.needsReason && ' You may allow it, saying why.'}
    </Box>
  );
}
