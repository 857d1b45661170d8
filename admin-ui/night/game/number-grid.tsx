import { useRef, useState } from 'react';
import type { TeamSheet } from '../../../server/domain/packet/packet.ts';
import { keyName, useKey } from '../keys.ts';
import { teamLook } from './team-look.ts';

export interface Who {
  readonly teamId: string;
  /** null for the team without a number */
  readonly playerNumber: string | null;
}

interface Props {
  team: TeamSheet;
  chosen: Who | null;
  onPick: (who: Who) => void;
  /** what stands under a number: fouls, "out" */
  markOf?: (number: string) => { text: string; words: string; isOut: boolean } | null;
  /** the key that goes to the field for a typed number; null for none */
  typeKey: string | null;
  /** the button for the team without a player is left out where a player is meant */
  withoutTeam?: boolean;
}

const NUMBER = /^\d{1,3}$/;

/** The field for a number that is on no list, and for fast fingers: type it, Enter. */
function TypedNumber({ team, onPick, typeKey }: Pick<Props, 'team' | 'onPick' | 'typeKey'>) {
  const field = useRef<HTMLInputElement>(null);
  const [number, setNumber] = useState('');
  useKey(typeKey, `Type a number of the ${team.nickname}`, () => field.current?.focus());
  return (
    <form className="desk-typed" onSubmit={(event) => {
      event.preventDefault();
      if (!NUMBER.test(number)) return;
      onPick({ teamId: team.teamId, playerNumber: number });
      setNumber('');
      field.current?.blur();
    }}>
      <label>
        <span>Other number {typeKey && <kbd>{keyName(typeKey)}</kbd>}</span>
        <input ref={field} inputMode="numeric" autoComplete="off" maxLength={3} value={number} onChange={(event) => setNumber(event.target.value.replace(/\D/g, ''))} aria-label={`Another number of the ${team.nickname}`} />
      </label>
      <button type="submit" disabled={!NUMBER.test(number)}>Take</button>
    </form>
  );
}

/** One team's numbers, large; every number keeps its place while the game goes on. */
export function NumberGrid({ team, chosen, onPick, markOf, typeKey, withoutTeam }: Props) {
  const isChosen = (number: string | null) => chosen?.teamId === team.teamId && chosen.playerNumber === number;
  return (
    <section className="desk-team" style={teamLook(team)} aria-label={team.nickname}>
      <h3><span className="desk-team-mark" aria-hidden="true" />{team.nickname}<small>{team.side === 'home' ? 'home' : 'visitors'}</small></h3>
      <div className="desk-numbers">
        {team.rows.map((row, place) => {
          const mark = markOf?.(row.number) ?? null;
          return (
            <button key={`${row.number} ${place}`} type="button" className="desk-number" aria-pressed={isChosen(row.number)} onClick={() => onPick({ teamId: team.teamId, playerNumber: row.number })}>
              <b>{row.number}</b>
              <span className="desk-number-name">{mark?.isOut && <strong>out </strong>}{row.name ?? (row.instead === 'do not announce' ? 'not announced' : (row.instead ?? ''))}</span>
              {mark && <span className={mark.isOut ? 'desk-mark desk-mark-out' : 'desk-mark'} title={mark.words}><span aria-hidden="true">{mark.text}</span><span className="desk-unseen">{mark.words}</span></span>}
            </button>
          );
        })}
        {!withoutTeam && (
          <button type="button" className="desk-number desk-number-team" aria-pressed={isChosen(null)} onClick={() => onPick({ teamId: team.teamId, playerNumber: null })}>
            <b aria-hidden="true">–</b><span className="desk-number-name">no number</span>
          </button>
        )}
      </div>
      <TypedNumber team={team} onPick={onPick} typeKey={typeKey} />
    </section>
  );
}
