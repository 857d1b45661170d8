import { Box, Checkbox, FormControlLabel, Typography } from '@mui/material';
import { useState } from 'react';
import { only } from '../../api/changes.ts';
import { CommandButton } from '../../forms/command-button.tsx';
import { today } from '../../format/day.ts';
import { moneyText } from '../../format/money.ts';
import { WordsInput } from '../../inputs/words-input.tsx';
import { department } from '../../session/me.ts';
import { NOT_READ_WORDS } from '../../words/choices.ts';
import { count } from '../../words/count.ts';
import type { LogEntryView, Night } from '../types.ts';

interface Signed {
  counted: number;
  earnedCents: number;
}

/** The director's decision on each read cut short, then the sign-off. */
export function SignOffForm({ night, cutShort }: { night: Night; cutShort: readonly LogEntryView[] }) {
  const usual = department().settings?.cutShortCounts ?? true;
  const [decided, setDecided] = useState<Record<string, boolean>>({});
  const [signed, setSigned] = useState<Signed | null>(null);
  const early = today() < night.heldOn;
  const counts = (entry: LogEntryView): boolean => decided[entry.id] ?? usual;
  return (
    <>
      {cutShort.length > 0 && (
        <Box component="fieldset" sx={{ border: 1, borderColor: 'divider', borderRadius: 1, my: 1.5 }}>
          <legend>Cut short: tick those where the sponsor’s name and main line were voiced</legend>
          {cutShort.map((entry) => (
            <FormControlLabel
              key={entry.id}
              sx={{ display: 'flex' }}
              control={<Checkbox checked={counts(entry)} onChange={(event) => setDecided({ ...decided, [entry.id]: event.target.checked })} />}
              label={`${entry.sponsorName ?? ''} ${entry.label ?? ''} – ${NOT_READ_WORDS[entry.reason ?? ''] ?? entry.reason ?? 'no reason given'}`}
            />
          ))}
        </Box>
      )}
      {signed && <Typography role="status">{count(signed.counted, 'read')} counted, {moneyText(signed.earnedCents)} earned.</Typography>}
      <CommandButton<Signed>
        label="Sign off the night"
        title={`Sign off ${night.title}?`}
        explains="The reads given, and the cut-short ones you ticked, are counted for their sponsors, and the money for them is earned. This is done once a night."
        path={`/nights/${night.id}/sign-off`}
        body={({ note, overrideReason }) => ({ ...only({ note, overrideReason }, 'note', 'overrideReason'), decisions: cutShort.map((entry) => ({ entryId: entry.id, counts: counts(entry) })) })}
        success="The night is signed off."
        variant="contained"
        onDone={setSigned}
      >
        {early && <WordsInput source="overrideReason" label="Why before its day" longest={300} required helperText="The night’s day has not come yet; only a director may close it now." />}
        <WordsInput source="note" label="Note" longest={1000} lines={2} helperText="Anything the office should know" />
      </CommandButton>
    </>
  );
}
