import { Box, Paper, Typography } from '@mui/material';
import { Go } from '../fields/go.tsx';
import { Tag } from '../fields/tag.tsx';
import { dayText } from '../format/day.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { gameUnder } from '../nights/game-words.ts';
import { PacketState } from '../nights/packet-state.tsx';
import { OpenDeskButton } from '../nights/table/open-desk-button.tsx';
import type { Night } from '../nights/types.ts';
import { iMay } from '../session/rights.ts';
import { Section } from '../show/section.tsx';
import { GAME_STATUS_WORDS, wordFor } from '../words/choices.ts';
import { count } from '../words/count.ts';

function NightCard({ night }: { night: Night }) {
  const [first, ...more] = night.readiness?.missing ?? [];
  return (
    <Paper component="li" variant="outlined" sx={{ p: 2, borderTop: '5px solid', borderTopColor: '#f2b134', display: 'flex', flexDirection: 'column', gap: 0.5, minWidth: 0, overflowWrap: 'anywhere' }}>
      <Typography component="p" sx={{ color: 'text.secondary' }}>{dayText(night.heldOn, 'weekday')} · {[night.venueName, night.floorName].filter(Boolean).join(', ')}</Typography>
      <Typography variant="h3" sx={{ fontSize: '1.1875rem' }}><Go resource="nights" id={night.id}>{night.title}</Go></Typography>
      {night.games.map((game) => <div key={game.id}>{gameUnder(night, game)}{game.status === 'cancelled' || game.status === 'postponed' ? <> <Tag mood="bad">{wordFor(GAME_STATUS_WORDS, game.status)}</Tag></> : null}</div>)}
      <div>{count(night.placementCount, 'sponsor read')} planned</div>
      <PacketState night={night} />
      {night.state === 'open' && first && <Box sx={{ color: 'text.secondary' }}>{first}{more.length > 0 ? ` And ${count(more.length, 'more thing')}.` : ''}</Box>}
      {night.state === 'open' && <Box sx={{ mt: 'auto', pt: 1 }}><OpenDeskButton nightId={night.id} title={night.title} variant="outlined" size="small" /></Box>}
    </Paper>
  );
}

export function NextNights({ nights }: { nights: readonly Night[] }) {
  return (
    <Section title="Which nights are next, and is the packet ready?" actions={<Go to="/nights">All nights</Go>}>
      {nights.length === 0 ? (
        <EmptyList>
          No night is coming. {iMay('games', 'create') ? <><Go to="/imports">Import the schedule</Go> or <Go to="/games/create">add a game</Go>; each home game makes its night.</> : 'The athletic director adds the games.'}
        </EmptyList>
      ) : (
        <Box component="ul" sx={{ listStyle: 'none', p: 0, m: 0, display: 'grid', gap: 1.5, gridTemplateColumns: 'repeat(auto-fill, minmax(min(100%, 250px), 1fr))' }}>
          {nights.map((night) => <NightCard key={night.id} night={night} />)}
        </Box>
      )}
    </Section>
  );
}
