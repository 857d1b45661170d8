import { Alert, Box, Button, Dialog, DialogActions, DialogContent, DialogTitle, TextField, Typography } from '@mui/material';
import { useContext, useId, useState } from 'react';
import { dayText } from '../format/day.ts';
import { count } from '../words/count.ts';
import { BoardStoreContext, useBoardState } from './board-store.ts';
import { moveAllTo } from './bulk.ts';
import { whyItStays } from './judge.ts';
import { cardsOf } from './layout-of-board.ts';
import type { BoardView, Card, Change } from './types.ts';

interface Props {
  view: BoardView;
  onChange: (changes: Change[], said: string) => void;
}

/** What can be done with all chosen cards at once. */
export function BulkBar({ view, onChange }: Props) {
  const store = useContext(BoardStoreContext);
  const chosen = useBoardState((state) => state.chosen);
  const choosing = useBoardState((state) => state.choosing);
  const [moving, setMoving] = useState(false);
  const cards = cardsOf(view).filter((card) => chosen.has(card.id) && !card.isHeld);
  const stop = () => store.set({ chosen: new Set(), choosing: false });
  const act = (changes: Change[], said: string) => {
    stop();
    if (changes.length > 0) onChange(changes, said);
  };
  const reads = count(cards.length, 'read');
  if (!choosing) return <Button variant="outlined" onClick={() => store.set({ choosing: true })}>Choose several</Button>;
  const pins = (kind: 'pin' | 'unpin') => cards.filter((card) => card.isPinned !== (kind === 'pin')).map((card) => ({ kind, placementId: card.id }));
  const movable = cards.filter((card) => whyItStays(view.season, card) === null);
  return (
    <Box role="group" aria-label="Chosen reads" sx={{ display: 'flex', gap: 1, flexWrap: 'wrap', alignItems: 'center', p: 1, border: 2, borderColor: 'text.primary', borderRadius: 1 }}>
      <Typography component="span" sx={{ fontWeight: 600, mr: 1 }}>{cards.length === 0 ? 'Press the reads you mean' : `${reads} chosen`}</Typography>
      <Button variant="outlined" disabled={movable.length === 0} onClick={() => setMoving(true)}>Move to a game…</Button>
      <Button variant="outlined" disabled={pins('pin').length === 0} onClick={() => act(pins('pin'), `${reads} pinned.`)}>Pin</Button>
      <Button variant="outlined" disabled={pins('unpin').length === 0} onClick={() => act(pins('unpin'), `${reads} unpinned.`)}>Unpin</Button>
      <Button variant="outlined" disabled={movable.length === 0} onClick={() => act(movable.map((card) => ({ kind: 'remove', placementId: card.id })), `${count(movable.length, 'read')} taken out.`)}>Take out</Button>
      <Button onClick={stop}>Done</Button>
      {moving && <BulkMoveDialog view={view} cards={cards} onClose={() => setMoving(false)} onMove={(changes, said) => { setMoving(false); act(changes, said); }} />}
    </Box>
  );
}

function BulkMoveDialog({ view, cards, onClose, onMove }: { view: BoardView; cards: readonly Card[]; onClose: () => void; onMove: (changes: Change[], said: string) => void }) {
  const open = view.season.games.filter((game) => !game.isLocked);
  const [gameId, setGameId] = useState(open[0]?.gameId ?? '');
  const titleId = useId();
  const { changes, left } = moveAllTo(view.season, cards, gameId);
  const game = open.find((one) => one.gameId === gameId);
  return (
    <Dialog open onClose={onClose} aria-labelledby={titleId} fullWidth maxWidth="sm">
      <DialogTitle id={titleId}>Move {count(cards.length, 'read')} to a game</DialogTitle>
      <DialogContent>
        <TextField select label="Game" value={gameId} onChange={(event) => setGameId(event.target.value)} slotProps={{ select: { native: true } }}>
          {open.map((one) => <option key={one.gameId} value={one.gameId}>{`${dayText(one.playedOn, 'weekday')}: ${one.label}`}</option>)}
        </TextField>
        {changes.length > 0 && <Typography sx={{ my: 1 }}>{changes.length === 1 ? '1 read finds' : `${changes.length} reads find`} room there.</Typography>}
        {left.length > 0 && (
          <Alert severity="warning">
            {left.length === 1 ? 'This one stays where it is:' : 'These stay where they are:'}
            <ul style={{ margin: '4px 0 0', paddingLeft: 20 }}>{left.map(({ card, why }) => <li key={card.id}>{card.sponsorName}: {why}</li>)}</ul>
          </Alert>
        )}
      </DialogContent>
      <DialogActions sx={{ px: 3, pb: 2 }}>
        <Button onClick={onClose}>Do not</Button>
        <Button variant="contained" disabled={changes.length === 0} onClick={() => onMove(changes, `${count(changes.length, 'read')} moved to ${game?.label ?? 'the game'}.`)}>Move {changes.length === 0 ? 'none' : changes.length}</Button>
      </DialogActions>
    </Dialog>
  );
}
