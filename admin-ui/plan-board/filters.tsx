import { Box, TextField } from '@mui/material';
import { monthText } from '../format/day.ts';
import { monthsOf } from './layout-of-board.ts';
import type { Wanted } from './layout-of-board.ts';
import type { BoardView } from './types.ts';

interface Choice {
  id: string;
  name: string;
}

function Filter({ label, all, value, choices, onChange }: { label: string; all: string; value: string; choices: readonly Choice[]; onChange: (value: string) => void }) {
  return (
    <TextField select label={label} value={choices.some((choice) => choice.id === value) ? value : ''} onChange={(event) => onChange(event.target.value)} sx={{ width: { xs: '100%', sm: 200 } }}
      slotProps={{ select: { native: true }, inputLabel: { shrink: true } }}>
      <option value="">{all}</option>
      {choices.map((choice) => <option key={choice.id} value={choice.id}>{choice.name}</option>)}
    </TextField>
  );
}

/** Which games and whose reads are shown; the choice stands in the address. */
export function Filters({ view, wanted, onChange }: { view: BoardView; wanted: Wanted; onChange: (name: keyof Wanted, value: string) => void }) {
  const sponsors = [...new Map([...view.reads, ...view.season.promises].map((one) => [one.sponsorId, { id: one.sponsorId, name: one.sponsorName }])).values()].sort((one, other) => (one.name < other.name ? -1 : 1));
  return (
    <Box sx={{ display: 'flex', gap: { xs: 0.5, sm: 1.5 }, flexWrap: 'wrap' }}>
      <Filter label="Team" all="All teams" value={wanted.team} choices={view.teams} onChange={(value) => onChange('team', value)} />
      <Filter label="Sponsor" all="All sponsors" value={wanted.sponsor} choices={sponsors} onChange={(value) => onChange('sponsor', value)} />
      <Filter label="Month" all="All months" value={wanted.month} choices={monthsOf(view).map((month) => ({ id: month, name: monthText(month) }))} onChange={(value) => onChange('month', value)} />
    </Box>
  );
}
