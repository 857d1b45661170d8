import { CommandButton } from '../forms/command-button.tsx';
import { DayInput } from '../inputs/day-input.tsx';
import type { Game } from './types.ts';

/** The rest of a suspended game, on another night. */
export const ResumeButton = ({ game }: { game: Game }) => (
  <CommandButton
    label="Resume"
    title={`Resume ${game.label}`}
    explains="The game goes on where it was broken off, on another night. The reads still owed in it can be given there; what was given before stays counted on its own night."
    path={`/games/${game.id}/resume`}
    confirmLabel="Resume the game"
    success="The game has a night to go on."
  >
    <DayInput source="day" label="Day it goes on" required />
  </CommandButton>
);
