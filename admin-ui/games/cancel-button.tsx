import { CommandButton } from '../forms/command-button.tsx';
import { ReasonInput } from '../forms/reason-input.tsx';
import type { Game } from './types.ts';

/** It will not be played. */
export const CancelButton = ({ game }: { game: Game }) => (
  <CommandButton
    label="Cancel the game"
    title={`Cancel ${game.label}?`}
    explains="The game will not be played and its night loses it. Reads promised for each game or night and not yet given are settled by each contract: credited to the sponsor, or their value moves on to the reads that remain. Reads promised over the whole term stay owed. A game cancelled by mistake has to be entered again."
    path={`/games/${game.id}/cancel`}
    confirmLabel="Cancel the game"
    color="error"
    success="The game is cancelled."
  >
    <ReasonInput />
  </CommandButton>
);
