import { CommandButton } from '../forms/command-button.tsx';
import { ReasonInput } from '../forms/reason-input.tsx';
import { MovePreviewSheet } from './move-preview.tsx';
import type { Game } from './types.ts';

/** It will not be played. */
export const CancelButton = ({ game }: { game: Game }) => (
  <CommandButton
    label="Cancel the game"
    title={`Cancel ${game.label}?`}
    explains="The game will not be played. Look at what that does to each contract. A game cancelled by mistake has to be entered again."
    path={`/games/${game.id}/cancel`}
    confirmLabel="Cancel the game"
    color="error"
    success="The game is cancelled."
    wide
  >
    <MovePreviewSheet gameId={game.id} form={{ kind: 'cancel' }} />
    <ReasonInput />
  </CommandButton>
);
