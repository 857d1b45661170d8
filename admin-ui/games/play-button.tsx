import { CommandButton } from '../forms/command-button.tsx';
import { CountInput } from '../inputs/count-input.tsx';
import type { Game } from './types.ts';

/** The final score. */
export const PlayButton = ({ game }: { game: Game }) => (
  <CommandButton
    label="Final score"
    title={`Final score of ${game.label}`}
    explains="The game is played. The official scorer’s book has the score; write what it says. Reads are counted when the night is signed off, not here."
    path={`/games/${game.id}/play`}
    defaults={{ scores: game.participants.map((one) => one.score) }}
    body={(values) => ({
      scores: game.participants.map((one, place) => ({ teamId: one.teamId, score: (values['scores'] as number[])[place] })),
    })}
    confirmLabel="Keep the score"
    success="The score is kept."
    variant="contained"
  >
    {game.participants.map((one, place) => (
      <CountInput key={one.id} source={`scores.${place}`} label={`${one.schoolName} ${one.nickname}${one.isHome ? ' (home)' : ''}`} max={999} required />
    ))}
  </CommandButton>
);
