import { CommandButton } from '../forms/command-button.tsx';

export const SealButton = () => (
  <CommandButton
    label="Set a seal now"
    title="Set a seal now"
    explains="Everything recorded since the last seal is chained to it. While it is set, other changes wait a moment."
    path="/seals"
    body={() => ({})}
    success="The seal is set."
    variant="contained"
  />
);
