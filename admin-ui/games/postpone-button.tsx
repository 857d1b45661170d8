import { only } from '../api/changes.ts';
import { CommandButton } from '../forms/command-button.tsx';
import { FormGrid } from '../forms/form-grid.tsx';
import { ReasonInput } from '../forms/reason-input.tsx';
import { ClockInput } from '../inputs/clock-input.tsx';
import { DayInput } from '../inputs/day-input.tsx';
import type { Game } from './types.ts';

/** Moved to a day, or to no day yet. */
export const PostponeButton = ({ game }: { game: Game }) => (
  <CommandButton
    label={game.status === 'postponed' ? 'Give it a new day' : 'Postpone'}
    title={game.status === 'postponed' ? `A new day for ${game.label}` : `Postpone ${game.label}?`}
    explains="The game takes its promised reads along to the new day, even past the last day of a commitment. Without a day it keeps them, and they wait. Places already planned for the old night have to be planned again. Nothing is credited."
    path={`/games/${game.id}/postpone`}
    body={(values) => only(values, 'reason', 'to', 'clock')}
    confirmLabel="Move the game"
    success="The game is moved."
  >
    <FormGrid>
      <DayInput source="to" label="New day" helperText="Leave empty while it is not known" />
      <ClockInput source="clock" label="New hour" />
    </FormGrid>
    <ReasonInput />
  </CommandButton>
);
