import { CommandButton } from '../forms/command-button.tsx';
import type { Game } from './types.ts';

/** The first whistle. */
export const StartButton = ({ game }: { game: Game }) => (
  <CommandButton
    label="Start"
    title={`Start ${game.label}?`}
    explains="The game is under way. Nothing changes in what is promised."
    path={`/games/${game.id}/start`}
    body={() => ({})}
    confirmLabel="Start the game"
    success="The game is under way."
    variant="contained"
  />
);
