import { Box, Button, Typography } from '@mui/material';
import { windowInWords } from '../../server/domain/planning/words/window.ts';
import { dayText } from '../format/day.ts';
import { Section } from '../show/section.tsx';
import { useBoardState } from './board-store.ts';
import { whyItStays } from './judge.ts';
import { cardsOf } from './layout-of-board.ts';
import type { BoardView, Card } from './types.ts';

export interface CardDeeds {
  onMove: (card: Card) => void;
  onPin: (card: Card) => void;
  onTakeOut: (card: Card) => void;
}

/** The read that was pressed: what it is, and everything the keys and the mouse can do, as buttons. */
export function OneRead({ view, deeds }: { view: BoardView; deeds: CardDeeds | null }) {
  const activeId = useBoardState((state) => state.activeId);
  const card = cardsOf(view).find((one) => one.id === activeId);
  const game = view.season.games.find((one) => one.gameId === card?.gameId);
  if (!card || !game) return null;
  const why = whyItStays(view.season, card);
  const reason = view.reads.find((read) => read.id === card.id)?.besideCompetitorReason;
  return (
    <Section title={card.sponsorName}>
      <Typography>{card.readKindName} in {windowInWords(card.windowKey)} of {game.label}, {dayText(game.playedOn, 'weekday')}.</Typography>
      {card.isPinned && <Typography>Pinned: only a person moves it.</Typography>}
      {reason && <Typography>Beside a competitor: {reason}</Typography>}
      {why && <Typography sx={{ mt: 0.5 }}>{why}</Typography>}
      {deeds && !card.isHeld && (
        <Box sx={{ display: 'flex', gap: 1, flexWrap: 'wrap', mt: 1 }}>
          {why === null && <Button variant="outlined" onClick={() => deeds.onMove(card)}>Move…</Button>}
          <Button variant="outlined" onClick={() => deeds.onPin(card)}>{card.isPinned ? 'Unpin' : 'Pin'}</Button>
          {why === null && <Button variant="outlined" onClick={() => deeds.onTakeOut(card)}>Take out</Button>}
        </Box>
      )}
    </Section>
  );
}
