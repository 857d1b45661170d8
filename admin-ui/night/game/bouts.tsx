import { useState } from 'react';
import type { LineUpRow, TeamSheet } from '../../../server/domain/packet/packet.ts';
import { useDesk } from '../desk.ts';
import { useBounceGuard } from '../shell/bounce.ts';
import type { Table } from './use-table.ts';

const at = (team: TeamSheet, weight: string): LineUpRow | undefined => team.rows.find((row) => row.position?.replace(/\D/g, '') === weight);
const nameOf = (row: LineUpRow | undefined): string => (row === undefined ? 'nobody listed' : (row.name ?? 'a member of the team'));

/** The bouts of a dual meet: choose the weight, who won and how; the last word on a weight holds. */
export function Bouts({ table }: { table: Table }) {
  const { write } = useDesk();
  const isBounce = useBounceGuard();
  const sheet = table.sheet!;
  const { weightClasses, bouts } = sheet.rules;
  const [weight, setWeight] = useState<string | null>(null);
  const chosen = weight ?? weightClasses.find((one) => sheet.bouts[one] === undefined) ?? weightClasses[0] ?? '';
  const win = (team: TeamSheet | null, how: string, points: number): void => {
    // The weight moves on with the tap, so no button may be hit twice, nor its neighbour.
    if (isBounce('bout')) return;
    const playerNumber = team === null ? null : (at(team, chosen)?.number ?? null);
    void write({ kind: 'bout', ...table.place(), teamId: team?.teamId ?? null, playerNumber, detail: { weightClass: chosen, how, points } }).catch(() => undefined);
    setWeight(null);
  };
  return (
    <div className="desk-bouts">
      <label className="desk-bout-weight"><span>Weight</span>
        <select className="desk-input" value={chosen} onChange={(event) => {
          setWeight(event.target.value);
          event.currentTarget.blur();
        }}>
          {weightClasses.map((one) => <option key={one} value={one}>{one} pounds{sheet.bouts[one] ? ', done' : ''}</option>)}
        </select>
      </label>
      {[table.visitors, table.home].map((team) => (
        <fieldset key={team.teamId} className="desk-bout-team">
          <legend>{team.nickname}: {nameOf(at(team, chosen))} won by</legend>
          {bouts.filter((bout) => !bout.isWithoutWinner).map((bout) => <button key={bout.how} type="button" className="desk-button" onClick={() => win(team, bout.how, bout.teamPoints)}>{bout.words} {bout.teamPoints}</button>)}
        </fieldset>
      ))}
      {bouts.filter((bout) => bout.isWithoutWinner).map((bout) => <button key={bout.how} type="button" className="desk-button" onClick={() => win(null, bout.how, 0)}>{bout.words}</button>)}
      <table className="desk-bout-table">
        <caption>Bouts so far</caption>
        <thead><tr><th scope="col">Weight</th><th scope="col">Won by</th><th scope="col">How</th><th scope="col">Points</th></tr></thead>
        <tbody>
          {weightClasses.map((one) => {
            const bout = sheet.bouts[one];
            const team = [table.visitors, table.home].find((side) => side.teamId === bout?.winnerTeamId);
            return <tr key={one}><th scope="row">{one}</th><td>{bout ? (team?.nickname ?? 'nobody') : ''}</td><td>{bout ? (bouts.find((rule) => rule.how === bout.how)?.words ?? bout.how) : ''}</td><td>{bout?.points ?? ''}</td></tr>;
          })}
        </tbody>
      </table>
    </div>
  );
}
