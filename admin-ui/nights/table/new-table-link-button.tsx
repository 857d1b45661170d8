import { useState } from 'react';
import { CommandButton } from '../../forms/command-button.tsx';
import { FlagInput } from '../../inputs/flag-input.tsx';
import { WordsInput } from '../../inputs/words-input.tsx';
import type { Night } from '../types.ts';
import { LinkDialog } from './link-dialog.tsx';
import type { NewTableLink } from './types.ts';

/** Makes the link of a night's table for somebody without an account. */
export function NewTableLinkButton({ night }: { night: Night }) {
  const [made, setMade] = useState<NewTableLink | null>(null);
  return (
    <>
      <CommandButton<NewTableLink>
        label="Give out a link"
        title={`A link to the table: ${night.title}`}
        explains="Whoever has the link and its PIN sees this night’s cues and rosters and keeps its log, nothing else. Entries show for whom the link was made."
        path={`/nights/${night.id}/table-links`}
        defaults={{ maySignOff: false }}
        onDone={setMade}
        success="The link is made."
      >
        <WordsInput source="label" label="For whom" longest={80} required helperText="The name that the log shows, such as “Odell Brandvold, substitute”" />
        <FlagInput source="maySignOff" label="May sign the night off" helperText="For an adult. A student spotter keeps the log, and somebody else signs off." />
      </CommandButton>
      {made && <LinkDialog night={night} link={made} onClose={() => setMade(null)} />}
    </>
  );
}
