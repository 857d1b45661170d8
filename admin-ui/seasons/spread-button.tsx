import { Dialog, DialogActions, DialogContent, DialogTitle, Button, Typography } from '@mui/material';
import { useState } from 'react';
import { CommandButton } from '../forms/command-button.tsx';
import { iMay } from '../session/rights.ts';
import { count } from '../words/count.ts';
import type { Season } from './types.ts';

interface Spread {
  placed: number;
  left: { commitmentId: string; sponsorName: string; readKindName: string; notPlaced: number }[];
}

/** Plans the reads still owed into the windows of the games to come. */
export function SpreadButton({ season }: { season: Season }) {
  const [outcome, setOutcome] = useState<Spread | null>(null);
  if (!iMay('contracts', 'edit')) return null;
  return (
    <>
      <CommandButton<Spread>
        label="Spread the reads over the season"
        title="Spread the reads over the season"
        explains="Every read still owed is given a place in a window of a coming night, evenly and in the order of priority. Places you pinned stay where they are. Nights signed off are not touched."
        path="/plan/spread"
        body={() => ({ seasonId: season.id })}
        confirmLabel="Spread them"
        success="The reads are spread."
        onDone={setOutcome}
      />
      <Dialog open={outcome !== null} onClose={() => setOutcome(null)} fullWidth>
        <DialogTitle>{outcome && `${count(outcome.placed, 'read')} placed`}</DialogTitle>
        <DialogContent>
          {outcome?.left.length === 0 && <Typography>Every read that is owed has a place.</Typography>}
          {outcome && outcome.left.length > 0 && (
            <>
              <Typography>These found no place. Add a game, sell fewer, or agree on something else with the sponsor:</Typography>
              <ul>
                {outcome.left.map((line) => (
                  <li key={line.commitmentId}>{line.sponsorName}, {line.readKindName}: {count(line.notPlaced, 'read')}</li>
                ))}
              </ul>
            </>
          )}
        </DialogContent>
        <DialogActions><Button onClick={() => setOutcome(null)}>Close</Button></DialogActions>
      </Dialog>
    </>
  );
}
