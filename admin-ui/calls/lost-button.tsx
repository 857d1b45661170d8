import { CommandButton } from '../forms/command-button.tsx';
import { dayText, today } from '../format/day.ts';
import { DayInput } from '../inputs/day-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import type { Sponsor } from '../sponsors/types.ts';

/** They said no for good; why is worth more next year than the name. */
export const LostButton = ({ sponsor }: { sponsor: Sponsor }) => (
  <CommandButton
    label="They are lost"
    title={`Is ${sponsor.name} lost?`}
    explains="The sponsor keeps its page, its contracts and its history, and is called no more: its next step is taken away."
    path={`/sponsors/${sponsor.id}/lose`}
    defaults={{ lostOn: today() }}
    confirmLabel="They are lost"
    success="It is written down why."
    color="error"
  >
    <DayInput source="lostOn" label="Since" required />
    <WordsInput source="reason" label="Why" longest={400} lines={2} required />
  </CommandButton>
);

/** They came back. */
export const WonBackButton = ({ sponsor }: { sponsor: Sponsor }) => (
  <CommandButton
    label="Won back"
    title={`Is ${sponsor.name} won back?`}
    explains={`It was lost ${dayText(sponsor.lostOn)}: ${sponsor.lostReason}. It is a sponsor to call again; write down what comes next.`}
    path={`/sponsors/${sponsor.id}/win-back`}
    confirmLabel="Won back"
    success="Welcome back."
  />
);
