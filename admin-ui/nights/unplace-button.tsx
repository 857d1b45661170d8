import { CommandButton } from '../forms/command-button.tsx';
import { windowName } from '../seasons/sports.ts';
import type { Placement } from './types.ts';

export const UnplaceButton = ({ placement }: { placement: Placement }) => (
  <CommandButton
    label="Take out"
    title={`Take out ${placement.sponsorName}, ${windowName(placement.windowKey)}?`}
    explains="The read stays owed and waits for another place."
    path={`/placements/${placement.id}`}
    method="DELETE"
    success="The place is free again."
    variant="text"
  />
);
