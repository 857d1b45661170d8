import { CommandButton } from '../forms/command-button.tsx';
import { today } from '../format/day.ts';
import { DayInput } from '../inputs/day-input.tsx';
import { only } from '../api/changes.ts';
import { WordsInput } from '../inputs/words-input.tsx';
import type { Copy, CopyVersion } from './types.ts';

/** The sponsor said yes: who, when, how you know. */
export const ApproveButton = ({ copy, version }: { copy: Copy; version: CopyVersion }) => (
  <CommandButton
    label="Record the approval"
    title={`Approve version ${version.number} of ${copy.title}`}
    explains="From now on these words go into packets on their days. Record who at the sponsor agreed to them."
    path={`/copies/${copy.id}/versions/${version.id}/approve`}
    defaults={{ approvedOn: today() }}
    body={(values) => only(values, 'approvedByName', 'approvedOn', 'note', 'overrideReason')}
    success="The words are approved."
    variant="contained"
  >
    <WordsInput source="approvedByName" label="Who agreed" longest={120} required />
    <DayInput source="approvedOn" label="On" required />
    <WordsInput source="note" label="Note" longest={500} helperText="By telephone, by letter …" />
    {version.check.verdict !== 'acknowledgment' && (
      <WordsInput source="overrideReason" label="Why marked words are approved" longest={300} helperText="The copy check marks these words. A reason is needed only where the department approves no marked copy; it is kept with the approval." />
    )}
  </CommandButton>
);
