import { Box, Button, Typography } from '@mui/material';
import { useState } from 'react';
import type { PlanGame } from '../../server/domain/planning/season.ts';
import { windowHeading } from '../../server/domain/planning/words/window.ts';
import { dayText } from '../format/day.ts';
import { Section } from '../show/section.tsx';
import { count } from '../words/count.ts';
import { useBoardState } from './board-store.ts';
import { whyItStays } from './judge.ts';
import type { GameCards, Laid } from './layout-of-board.ts';
import type { CardDeeds } from './one-read.tsx';
import { initialsOf } from './tint.ts';
import type { Tint } from './tint.ts';
import type { BoardGameView, BoardView, Card } from './types.ts';

interface Props {
  view: BoardView;
  laid: Laid;
  facts: ReadonlyMap<string, BoardGameView>;
  sponsor: string;
  tints: ReadonlyMap<string, Tint>;
  deeds: CardDeeds | null;
  onLock: (gameId: string) => void;
  onChoose: (id: string) => void;
}

const AT_ONCE = 12;

/** The plan night by night, its windows and reads as a list: for a phone and for whoever listens. */
export function ListForm(props: Props) {
  const [shown, setShown] = useState(AT_ONCE);
  const all = [...new Set(props.laid.games.map((game) => game.nightId))];
  return (
    <>
      {all.slice(0, shown).map((nightId) => <NightSheet key={nightId} games={props.laid.games.filter((game) => game.nightId === nightId)} {...props} />)}
      {all.length > shown && <Button variant="outlined" onClick={() => setShown(shown + AT_ONCE)}>Show {Math.min(AT_ONCE, all.length - shown)} more nights</Button>}
    </>
  );
}

function NightSheet({ games, ...props }: Props & { games: readonly PlanGame[] }) {
  const [first] = games as [PlanGame];
  const night = props.facts.get(first.gameId);
  const isIssued = night?.lock?.why === 'issued';
  const when = dayText(first.playedOn, 'weekday');
  return (
    <Section
      title={`${when}: ${games.length === 1 ? first.label : (night?.nightTitle ?? first.label)}`}
      actions={props.deeds && !isIssued ? (
        <Button variant="outlined" aria-pressed={first.isLocked} aria-label={`${first.isLocked ? 'Unlock' : 'Lock'} the night of ${first.label}, ${when}`} onClick={() => props.onLock(first.gameId)}>{first.isLocked ? 'Unlock the night' : 'Lock the night'}</Button>
      ) : undefined}
    >
      {first.isLocked && <Typography sx={{ mb: 1 }}>{isIssued ? 'The packet is issued, so this night is locked.' : 'This night is locked: nothing is planned into or out of it.'}</Typography>}
      {games.map((game) => (
        <Box key={game.gameId}>
          {games.length > 1 && <Typography variant="h3" sx={{ mt: 1 }}>{game.label}</Typography>}
          <WindowList game={game} cards={props.laid.cards.get(game.gameId)!} {...props} />
        </Box>
      ))}
    </Section>
  );
}

function WindowList({ game, cards, sponsor, ...props }: Props & { game: PlanGame; cards: GameCards }) {
  const windows = game.windows.filter((window) => window.places > 0 || (cards[window.key]?.length ?? 0) > 0);
  return (
    <Box component="ul" sx={{ listStyle: 'none', p: 0, m: 0 }}>
      {windows.map((window) => {
        const here = cards[window.key] ?? [];
        const own = sponsor ? here.filter((card) => card.sponsorId === sponsor) : here;
        if (sponsor && own.length === 0) return null;
        return (
          <Box component="li" key={window.key} sx={{ borderTop: 1, borderColor: 'divider', py: 0.75 }}>
            <Typography component="span" sx={{ fontWeight: 600 }}>{windowHeading(window.key)}</Typography>
            <Typography component="span" sx={{ color: 'text.secondary', ml: 1 }}>{here.length} of {count(window.places, 'place')}</Typography>
            {own.length > 0 && <Box component="ul" sx={{ listStyle: 'none', p: 0, m: 0 }}>{own.map((card) => <ReadRow key={card.id} card={card} game={game} {...props} />)}</Box>}
          </Box>
        );
      })}
    </Box>
  );
}

function ReadRow({ card, game, view, tints, deeds, onChoose }: Omit<Props, 'sponsor'> & { card: Card; game: PlanGame }) {
  const choosing = useBoardState((state) => state.choosing);
  const isChosen = useBoardState((state) => state.chosen.has(card.id));
  const { ground, edge } = tints.get(card.sponsorId)!;
  const stays = whyItStays(view.season, card) !== null;
  const named = `${card.sponsorName}, ${windowHeading(card.windowKey)}, ${game.label}`;
  return (
    <Box component="li" data-read={card.id} sx={{ display: 'flex', gap: 1, alignItems: 'center', flexWrap: 'wrap', py: 0.5 }}>
      <Box sx={{ display: 'flex', alignItems: 'center', gap: 1, flex: '1 1 220px', minWidth: 0, minHeight: 36, borderRadius: 1, overflow: 'hidden', border: card.isHeld ? '2px dashed' : '1px solid', borderColor: edge, bgcolor: card.isHeld ? 'transparent' : ground, pr: 1 }}>
        <Box aria-hidden="true" sx={{ alignSelf: 'stretch', width: 32, flexShrink: 0, display: 'grid', placeItems: 'center', bgcolor: edge, color: 'background.paper', fontWeight: 700, fontSize: '0.75rem' }}>{initialsOf(card.sponsorName)}</Box>
        <Box sx={{ minWidth: 0, overflowWrap: 'anywhere' }}>
          {card.sponsorName}
          <Box component="span" sx={{ display: 'block', fontSize: '0.875rem' }}>{[card.readKindName, card.isHeld && 'kept for an open offer', card.isPinned && 'pinned', card.isLogged && 'logged'].filter(Boolean).join(', ')}</Box>
        </Box>
      </Box>
      {choosing && !card.isHeld && <Button variant={isChosen ? 'contained' : 'outlined'} aria-pressed={isChosen} aria-label={`Choose ${named}`} onClick={() => onChoose(card.id)}>{isChosen ? 'Chosen' : 'Choose'}</Button>}
      {deeds && !choosing && !card.isHeld && (
        <Box sx={{ display: 'flex', gap: 0.5, flexWrap: 'wrap' }}>
          {!stays && <Button aria-label={`Move ${named}`} onClick={() => deeds.onMove(card)} sx={{ px: 1.25 }}>Move…</Button>}
          <Button aria-label={`${card.isPinned ? 'Unpin' : 'Pin'} ${named}`} onClick={() => deeds.onPin(card)} sx={{ px: 1.25 }}>{card.isPinned ? 'Unpin' : 'Pin'}</Button>
          {!stays && <Button aria-label={`Take out ${named}`} onClick={() => deeds.onTakeOut(card)} sx={{ px: 1.25 }}>Take out</Button>}
        </Box>
      )}
    </Box>
  );
}
