import { useState } from 'react';
import type { DeskGame } from '../../../server/domain/night/desk/bundle.ts';
import { useKey } from '../keys.ts';

interface Props {
  game: DeskGame;
  title: string;
  pick: (teamId: string, playerNumber: string | null) => void;
  close: () => void;
}

/** Whose it was: a number of the roster, or the team alone. */
export function ShooterNumber({ game, title, pick, close }: Props) {
  const ours = [game.home, game.visitors].toSorted((one, other) => Number(game.ourTeamIds.includes(other.teamId)) - Number(game.ourTeamIds.includes(one.teamId)));
  const [teamId, setTeamId] = useState(ours[0]!.teamId);
  const team = ours.find((one) => one.teamId === teamId)!;
  useKey('Escape', 'Close', close);
  useKey('0', 'No number', () => pick(teamId, null));
  return (
    <div className="desk-now-shooter" role="group" aria-label={`${title}: whose`}>
      <div className="desk-now-row">
        {ours.map((one) => <button key={one.teamId} type="button" className="desk-button" aria-pressed={one.teamId === teamId} onClick={() => setTeamId(one.teamId)}>{one.nickname}</button>)}
        <button type="button" className="desk-button" onClick={() => pick(teamId, null)}>No number <kbd>0</kbd></button>
        <button type="button" className="desk-button desk-now-quiet" onClick={close}>Close <kbd>Esc</kbd></button>
      </div>
      <div className="desk-now-numbers">
        {team.rows.map((row, place) => <button key={`${row.number} ${place}`} type="button" className="desk-button" aria-label={`Number ${row.number}`} onClick={() => pick(teamId, row.number)}>{row.number}</button>)}
      </div>
    </div>
  );
}
