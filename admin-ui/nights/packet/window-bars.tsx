import { Box, Typography } from '@mui/material';
import type { Cue, Packet, WindowLoad } from '../../../server/domain/packet/packet.ts';
import { EmptyList } from '../../lists/empty-list.tsx';
import { Section } from '../../show/section.tsx';
import { levelsOf } from '../game-words.ts';
import type { Night } from '../types.ts';
import { secondsText } from './seconds-text.ts';

/** The bar repeats the figures beside it, so it is left out for whoever has the page read aloud. */
function Bar({ window }: { window: WindowLoad }) {
  if (window.capacitySeconds === null) return null;
  const share = Math.min(100, (window.filledSeconds / Math.max(1, window.capacitySeconds)) * 100);
  return (
    <Box aria-hidden="true" sx={{ height: 12, borderRadius: 1, border: 1, borderColor: 'text.secondary', overflow: 'hidden' }}>
      <Box
        sx={{
          width: `${share}%`, height: '100%', bgcolor: window.overSeconds > 0 ? 'error.main' : 'primary.main',
          backgroundImage: window.overSeconds > 0 ? 'repeating-linear-gradient(45deg, transparent 0 5px, rgba(255,255,255,.45) 5px 8px)' : 'none',
        }}
      />
    </Box>
  );
}

function figures({ filledSeconds, capacitySeconds }: WindowLoad): string {
  return capacitySeconds === null ? `${secondsText(filledSeconds)}, no limit` : `${secondsText(filledSeconds)} of ${secondsText(capacitySeconds)}`;
}

function noteOf(window: WindowLoad, cues: readonly Cue[]): string | null {
  const move = cues.find((cue) => cue.number === window.moveCueNumber);
  if (window.overSeconds > 0) return `${secondsText(window.overSeconds)} too many${move ? `: move ${move.code}, ${move.sponsorName ?? move.title}` : ''}`;
  if (window.mayNotHappen && !window.isReliedOn) return 'May not come: its reads wait in line';
  return window.mayNotHappen ? 'May not come; you rely on it' : null;
}

function Row({ window, cues }: { window: WindowLoad; cues: readonly Cue[] }) {
  const note = noteOf(window, cues);
  const codes = window.cueNumbers.flatMap((number) => cues.find((cue) => cue.number === number)?.code ?? []);
  return (
    <Box component="li" sx={{ display: 'grid', gridTemplateColumns: { xs: '1fr auto', md: '13rem 1fr 10rem' }, columnGap: 2, rowGap: 0.5, alignItems: 'center', py: 0.75 }}>
      <Box sx={{ overflowWrap: 'anywhere' }}>{window.title}</Box>
      <Box sx={{ order: { xs: 3, md: 0 }, gridColumn: { xs: '1 / -1', md: 'auto' }, minWidth: 0 }}>
        <Bar window={window} />
        <Box sx={{ color: window.overSeconds > 0 ? 'error.main' : 'text.secondary', fontSize: '0.9rem', overflowWrap: 'anywhere' }}>
          {[codes.join(', '), note].filter(Boolean).join(' · ') || 'Nothing to read'}
        </Box>
      </Box>
      <Box className="tabular" sx={{ textAlign: 'right', fontWeight: window.overSeconds > 0 ? 700 : 400 }}>{figures(window)}</Box>
    </Box>
  );
}

/** A time-out nothing is planned into is no news. */
const isWorthShowing = (window: WindowLoad): boolean => !window.mayNotHappen || window.cueNumbers.length > 0;

/** Each window of each game: what is read in it against the seconds there are. */
export function WindowBars({ night, packet }: { night: Night; packet: Packet }) {
  const windows = packet.windows ?? [];
  const games = night.games.filter((game) => windows.some((window) => window.gameId === game.id));
  return (
    <Section title="Windows" lead="Seconds to read against the seconds there are, at tonight's announcer's own pace.">
      {games.length === 0 && <EmptyList>A window belongs to a game, and this night has none yet.</EmptyList>}
      {games.map((game) => (
        <Box key={game.id} sx={{ mb: 1.5 }}>
          {games.length > 1 && <Typography variant="h3">{levelsOf(night).get(game.id)}</Typography>}
          <Box component="ul" sx={{ listStyle: 'none', p: 0, m: 0 }}>
            {windows.filter((window) => window.gameId === game.id && isWorthShowing(window)).map((window) => <Row key={window.windowKey} window={window} cues={packet.cues} />)}
          </Box>
        </Box>
      ))}
      {packet.nextTimeOut?.length > 0 && <p><strong>Next time-out, in line:</strong> {packet.nextTimeOut.join(', ')}</p>}
    </Section>
  );
}
