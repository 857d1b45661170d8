import { Name } from '../fields/name.tsx';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { iMay } from '../session/rights.ts';
import { ANNOUNCE_WORDS, wordFor } from '../words/choices.ts';
import { EraseButton } from './erase-button.tsx';
import type { RosterPlayer, Team } from './types.ts';

export function Roster({ team }: { team: Team }) {
  const players = team.roster ?? [];
  if (players.length === 0) return <EmptyList>No players yet. Press “Edit the roster” and type them, or import a roster file.</EmptyList>;
  const erase = iMay('teams', 'edit') ? [{ label: 'Erase', show: (player: RosterPlayer) => <EraseButton player={player} /> }] : [];
  return (
    <Rows<RosterPlayer>
      label={`Roster of ${team.label}`}
      rows={players}
      columns={[
        { label: 'Number', show: (player) => player.number },
        { label: 'Name', show: (player) => <Name name={player.name} sayAs={player.sayAs} /> },
        { label: 'Announced', show: (player) => wordFor(ANNOUNCE_WORDS, player.announce) },
        { label: 'Position', show: (player) => player.position ?? '–' },
        { label: 'Grade', show: (player) => player.grade ?? '–' },
        { label: 'Starts', show: (player) => (player.isStarter ? 'Starter' : '–') },
        ...erase,
      ]}
    />
  );
}
