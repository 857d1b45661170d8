import type { NewDeskEntry } from '../../../server/domain/night/desk/desk-entry.ts';
import { keyName, useKey } from '../keys.ts';
import { NumberGrid } from './number-grid.tsx';
import { useTable } from './use-table.ts';
import './game.css';

interface Props {
  /** "Who made the bank shot?" */
  question: string;
  /** only these teams are asked for; all where nothing is said */
  teamIds?: readonly string[];
  /** with game, period and typed clock, as an entry wants them; a null number is "I did not see who" */
  onPick: (shooter: Required<Pick<NewDeskEntry, 'teamId' | 'playerNumber' | 'gameId' | 'period' | 'clock'>>) => void;
  onCancel: () => void;
}

/** Who did it: one tap on the number, or a typed one. For a happening and the mention it calls for. */
export function ShooterPick({ question, teamIds, onPick, onCancel }: Props) {
  const table = useTable();
  useKey('Escape', 'Leave without a shooter', onCancel);
  if (table === null) return null;
  const teams = [table.visitors, table.home].filter((team) => teamIds === undefined || teamIds.includes(team.teamId));
  return (
    <div className="desk-shooter" role="group" aria-label={question}>
      <div className="desk-shooter-head">
        <strong>{question}</strong>
        <button type="button" className="desk-button" onClick={onCancel}>Cancel <kbd>{keyName('Escape')}</kbd></button>
      </div>
      <div className="desk-teams">
        {teams.map((team) => (
          <NumberGrid key={team.teamId} team={team} chosen={null} typeKey={team.side === 'home' ? ']' : '['}
            onPick={({ teamId, playerNumber }) => {
              const { gameId = null, period = null, clock = null } = table.place();
              onPick({ teamId, playerNumber, gameId, period, clock });
            }} />
        ))}
      </div>
    </div>
  );
}
