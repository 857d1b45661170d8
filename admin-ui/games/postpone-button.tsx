import { useWatch } from 'react-hook-form';
import { only } from '../api/changes.ts';
import { CommandButton } from '../forms/command-button.tsx';
import { FormGrid } from '../forms/form-grid.tsx';
import { ReasonInput } from '../forms/reason-input.tsx';
import { ClockInput } from '../inputs/clock-input.tsx';
import { DayInput } from '../inputs/day-input.tsx';
import { MovePreviewSheet } from './move-preview.tsx';
import type { Game, MovePreviewForm } from './types.ts';

const isWhole = (day: string): boolean => day >= '2000-01-01' && day <= '2199-12-31';

/** Asked again as the day changes; a day that is being typed asks nothing yet. */
function Preview({ game }: { game: Game }) {
  const to = useWatch({ name: 'to' }) as string | null | undefined;
  const isWaiting = game.status === 'postponed';
  const form: MovePreviewForm | null = to ? (isWhole(to) ? { kind: 'reschedule', to } : null) : isWaiting ? null : { kind: 'postpone' };
  return <MovePreviewSheet gameId={game.id} form={form} />;
}

/** Moved to a day, or to no day yet. */
export const PostponeButton = ({ game }: { game: Game }) => (
  <CommandButton
    label={game.status === 'postponed' ? 'Give it a new day' : 'Postpone'}
    title={game.status === 'postponed' ? `A new day for ${game.label}` : `Postpone ${game.label}?`}
    explains="The game takes its promised reads and their places along to the new day, even past the last day for which they were promised. Without a day it keeps them, and they wait. Nothing is credited."
    path={`/games/${game.id}/postpone`}
    body={(values) => only(values, 'reason', 'to', 'clock')}
    confirmLabel="Move the game"
    success="The game is moved."
    wide
  >
    <FormGrid>
      <DayInput source="to" label="New day" helperText="Leave empty while it is not known" />
      <ClockInput source="clock" label="New hour" />
    </FormGrid>
    <Preview game={game} />
    <ReasonInput />
  </CommandButton>
);
