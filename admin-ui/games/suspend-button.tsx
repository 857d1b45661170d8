import { CommandButton } from '../forms/command-button.tsx';
import { ReasonInput } from '../forms/reason-input.tsx';
import { iMay } from '../session/rights.ts';
import { MovePreviewSheet } from './move-preview.tsx';
import type { Game } from './types.ts';

/** Broken off, to be finished another night. */
export const SuspendButton = ({ game }: { game: Game }) => (
  <CommandButton
    label="Suspend"
    title={`Suspend ${game.label}?`}
    explains="The game is broken off and finished on another night. Reads given so far stay given; the reads still owed in this game wait until it goes on."
    path={`/games/${game.id}/suspend`}
    confirmLabel="Suspend the game"
    success="The game is suspended."
    wide
  >
    {iMay('contracts', 'list') && <MovePreviewSheet gameId={game.id} form={{ kind: 'suspend' }} />}
    <ReasonInput />
  </CommandButton>
);
