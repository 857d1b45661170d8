import { CommandButton } from '../forms/command-button.tsx';
import type { RosterPlayer } from './types.ts';

/** Takes a student's name out of the records; the log keeps the player without the name. */
export function EraseButton({ player }: { player: RosterPlayer }) {
  if (!player.playerId) return null;
  return (
    <CommandButton
      label="Erase the name"
      title={`Erase the name of number ${player.number}?`}
      explains="The name and how to say it are taken out for good, on every team and every year. What was logged stays, without the name. This cannot be undone."
      path={`/players/${player.playerId}/erase`}
      body={() => ({})}
      confirmLabel="Erase the name"
      color="error"
      variant="text"
      success="The name is erased."
    />
  );
}
