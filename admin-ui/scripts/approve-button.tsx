import { only } from '../api/changes.ts';
import { CommandButton } from '../forms/command-button.tsx';
import { today } from '../format/day.ts';
import { DayInput } from '../inputs/day-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import type { Script } from './types.ts';

export const ApproveScript = ({ script }: { script: Script }) => (
  <CommandButton
    label="Approve the words"
    title={`Approve “${script.title}”`}
    explains={`Wording ${script.wordsNumber} as it stands here. A change of words takes the approval away.`}
    path={`/scripts/${script.id}/approve`}
    defaults={{ approvedOn: today() }}
    body={(values) => ({ ...only(values, 'approvedByName', 'approvedOn'), wordsNumber: script.wordsNumber })}
    success="The words are approved."
  >
    <WordsInput source="approvedByName" label="Who approves" longest={120} required />
    <DayInput source="approvedOn" label="On" required />
  </CommandButton>
);

export const TurnScript = ({ script }: { script: Script }) => (
  <CommandButton
    label={script.isOn ? 'Leave it out of packets' : 'Put it into packets'}
    title={script.isOn ? `Turn “${script.title}” off` : `Turn “${script.title}” on`}
    explains={script.isOn ? 'The script stays in the library and is left out of the packets of nights to come.' : 'The script goes into the packets of nights to come.'}
    path={`/scripts/${script.id}`}
    method="PATCH"
    version={script.version}
    body={() => ({ isOn: !script.isOn })}
    success={script.isOn ? 'The script is off.' : 'The script is on.'}
  />
);
