import { useRef, useState } from 'react';
import { readPastedRoster } from '../../../server/domain/night/desk/sheet/roster-paste.ts';
import type { RefusedLine, TypedPlayer } from '../../../server/domain/night/desk/sheet/roster-paste.ts';
import { planWorn, wornWarnings } from '../../../server/domain/night/desk/sheet/worn-tonight.ts';
import { useDesk } from '../desk.ts';
import { Sheet } from '../shell/sheet.tsx';
import type { Table } from './use-table.ts';

interface Told {
  readonly text: string;
  readonly sentence: string;
}

/** Who wears what by now, and what its numbers are warned for. */
function ListTonight({ table, side }: { table: Table; side: 'visitors' | 'home' }) {
  const { nickname, rows } = table[side];
  return (
    <>
      {wornWarnings(table.game.rules, rows).map((warning) => <p key={warning} className="desk-notice desk-notice-care">{warning}</p>)}
      <h3>{nickname} tonight</h3>
      <ol className="desk-roster">{rows.map((row, place) => <li key={`${row.number} ${place}`}><b>{row.number}</b> {row.name ?? row.instead ?? 'number only'} {row.sayAs && <small>{row.sayAs}</small>}</li>)}</ol>
    </>
  );
}

/** The list of the night, typed or pasted at the last minute: number, name, how to say it. It works without a network. */
export function RosterSheet({ table, onClose }: { table: Table; onClose: () => void }) {
  const { write } = useDesk();
  const [side, setSide] = useState<'visitors' | 'home'>('visitors');
  const [typed, setTyped] = useState({ number: '', name: '', sayAs: '' });
  const [pasted, setPasted] = useState('');
  const [told, setTold] = useState<readonly Told[]>([]);
  const numberField = useRef<HTMLInputElement>(null);
  const team = table[side];
  const isOurs = table.game.ourTeamIds.includes(team.teamId);
  const take = (players: readonly TypedPlayer[], refused: readonly RefusedLine[]): void => {
    // New numbers stand in the order they are stored in.
    const plans = planWorn(team, players.toSorted((one, other) => Number(one.number) - Number(other.number)), isOurs);
    for (const { entry } of plans) if (entry) void write({ ...entry, gameId: table.game.gameId }).catch(() => setTold([{ text: '', sentence: 'This device takes no more entries. Write the names on paper.' }]));
    setTold([...refused.map(({ line, text, sentence }) => ({ text: `Line ${line}, “${text}”`, sentence })), ...plans.map(({ player, sentence, keepsName }) => ({ text: keepsName ? `${player.number} ${player.name}` : player.number, sentence }))]);
  };
  return (
    <Sheet title="Who wears what tonight" onClose={onClose}>
      <div className="desk-more-buttons">
        {(['visitors', 'home'] as const).map((one) => <button key={one} type="button" className="desk-button" aria-pressed={side === one} onClick={() => setSide(one)}>{table[one].nickname}</button>)}
      </div>
      {isOurs && <p>Our list comes from the office, which knows what each family chose: a name that is not on it is not kept, and its player is called by number only.</p>}
      <form className="desk-roster-form" onSubmit={(event) => {
        event.preventDefault();
        const { number, name, sayAs } = typed;
        const { players, refused } = readPastedRoster(`${number}\t${name}${sayAs.trim() === '' ? '' : ` (${sayAs.trim()})`}`);
        take(players, refused);
        if (refused.length === 0) setTyped({ number: '', name: '', sayAs: '' });
        numberField.current?.focus();
      }}>
        <label><span>Number</span><input ref={numberField} className="desk-input" inputMode="numeric" maxLength={3} autoComplete="off" value={typed.number} onChange={(event) => setTyped({ ...typed, number: event.target.value.replace(/\D/g, '') })} /></label>
        <label><span>Name</span><input className="desk-input" maxLength={80} autoComplete="off" value={typed.name} onChange={(event) => setTyped({ ...typed, name: event.target.value })} /></label>
        <label><span>How to say it</span><input className="desk-input" maxLength={80} autoComplete="off" value={typed.sayAs} onChange={(event) => setTyped({ ...typed, sayAs: event.target.value })} /></label>
        <button type="submit" className="desk-button desk-button-main">Add</button>
      </form>
      <form className="desk-form" onSubmit={(event) => {
        event.preventDefault();
        const { players, refused } = readPastedRoster(pasted);
        take(players, refused);
        setPasted(refused.map((line) => line.text).join('\n'));
      }}>
        <label className="desk-paste"><span>Or paste a list, one player a line: 12 Łukasz Wren (WOO-kahsh ren)</span>
          <textarea className="desk-input" rows={6} value={pasted} onChange={(event) => setPasted(event.target.value)} />
        </label>
        <button type="submit" className="desk-button" disabled={pasted.trim() === ''}>Take the list</button>
      </form>
      <div role="status"><ul className="desk-told">{told.map(({ text, sentence }) => <li key={`${text} ${sentence}`}><b>{text}</b> {sentence}</li>)}</ul></div>
      <ListTonight table={table} side={side} />
    </Sheet>
  );
}
