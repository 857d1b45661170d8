import { Button, Dialog, DialogActions, DialogContent, DialogTitle, FormControlLabel, Radio, RadioGroup, TextField, Typography } from '@mui/material';
import { useId, useState } from 'react';
import type { PlanGame } from '../../server/domain/planning/season.ts';
import { windowHeading } from '../../server/domain/planning/words/window.ts';
import { dayText } from '../format/day.ts';
import { CompetitorReason } from './competitor-reason.tsx';
import { judgeAdd, judgeMove } from './judge.ts';
import type { Verdict } from './judge.ts';
import type { BoardView, Card, Spot } from './types.ts';

/** What gets a place: a card that has one already, or a read of a promise that has none. */
export type ToPlace = { card: Card } | { promiseId: string; sponsorName: string; readKindName: string };

interface Props {
  what: ToPlace;
  view: BoardView;
  onClose: () => void;
  onChosen: (to: Spot, reason: string | undefined) => void;
}

const TONES: Record<Verdict['tone'], string> = { good: '✓', care: '!', bad: '✕' };

const promiseIdOf = (what: ToPlace): string => ('card' in what ? what.card.promiseId : what.promiseId);

/** The games that the promise is about, with the night's day, to choose from. */
function gamesFor(what: ToPlace, view: BoardView): readonly PlanGame[] {
  const own = new Set(view.season.promises.find((promise) => promise.promiseId === promiseIdOf(what))?.slots.flatMap((slot) => slot.gameIds));
  return view.season.games.filter((game) => own.has(game.gameId));
}

/** All windows of one game that take the read, with what each would break; a wall cannot be chosen. */
export function MoveDialog({ what, view, onClose, onChosen }: Props) {
  const games = gamesFor(what, view);
  const [gameId, setGameId] = useState(('card' in what && games.some((game) => game.gameId === what.card.gameId) ? what.card.gameId : games.find((game) => !game.isLocked)?.gameId) ?? '');
  const [windowKey, setWindowKey] = useState('');
  const [reason, setReason] = useState('');
  const titleId = useId();
  const game = games.find((one) => one.gameId === gameId);
  const isHere = (key: string): boolean => 'card' in what && what.card.gameId === gameId && what.card.windowKey === key;
  const kinds = view.season.promises.find((promise) => promise.promiseId === promiseIdOf(what))?.windows ?? [];
  const targets = (game?.windows ?? []).filter((window) => window.places > 0 && (kinds.includes(window.key) || kinds.includes(window.kind))).map(({ key }) => {
    const to = { gameId, windowKey: key };
    return { key, verdict: 'card' in what ? judgeMove(view.season, what.card, to) : judgeAdd(view.season, what.promiseId, to) };
  });
  const chosen = targets.find((target) => target.key === windowKey);
  const named = 'card' in what ? what.card : what;
  const isReady = chosen !== undefined && (chosen.verdict.tone !== 'bad' || (chosen.verdict.needsReason && reason.trim() !== ''));
  return (
    <Dialog open onClose={onClose} aria-labelledby={titleId} fullWidth maxWidth="sm">
      <DialogTitle id={titleId}>{'card' in what ? 'Move' : 'Place'} {named.sponsorName}</DialogTitle>
      <DialogContent>
        <Typography sx={{ mb: 1 }}>{named.readKindName}. Choose the game, then the window; beside each stands what it would break.</Typography>
        <TextField select label="Game" value={gameId} onChange={(event) => { setGameId(event.target.value); setWindowKey(''); }} slotProps={{ select: { native: true } }}>
          {games.map((one) => <option key={one.gameId} value={one.gameId}>{`${dayText(one.playedOn, 'weekday')}: ${one.label}${one.isLocked ? ' (locked)' : ''}`}</option>)}
        </TextField>
        {games.length === 0 && <Typography>None of the games to come takes this read.</Typography>}
        <RadioGroup aria-label="Window" value={windowKey} onChange={(_, key) => setWindowKey(key)}>
          {targets.map(({ key, verdict }) => (
            <FormControlLabel key={key} value={key} disabled={isHere(key) || (verdict.tone === 'bad' && !verdict.needsReason)} control={<Radio />} sx={{ alignItems: 'flex-start', '& .MuiFormControlLabel-label': { py: 1.25 } }}
              label={<><b>{windowHeading(key)}</b> <span aria-hidden="true">{TONES[verdict.tone]}</span> {verdict.sentences.join(' ')}</>} />
          ))}
        </RadioGroup>
        {chosen?.verdict.needsReason && <CompetitorReason value={reason} onChange={setReason} />}
      </DialogContent>
      <DialogActions sx={{ px: 3, pb: 2 }}>
        <Button onClick={onClose}>Do not</Button>
        <Button variant="contained" disabled={!isReady} onClick={() => onChosen({ gameId, windowKey }, chosen?.verdict.needsReason ? reason.trim() : undefined)}>{'card' in what ? 'Move it' : 'Place it'}</Button>
      </DialogActions>
    </Dialog>
  );
}
