import { MenuItem, TextField } from '@mui/material';
import { useGetList } from 'react-admin';
import { dayText, today } from '../format/day.ts';

interface NightRow {
  id: string;
  title: string;
  heldOn: string;
}

/** The night a script is tried on; without one, names made up for the purpose. */
export function NightChoice({ value, onChange }: { value: string; onChange: (nightId: string) => void }) {
  const { data = [] } = useGetList<NightRow>('nights', { filter: { from: today() }, sort: { field: 'heldOn', order: 'ASC' }, pagination: { page: 1, perPage: 50 } });
  return (
    <TextField select label="Tried on" value={data.some(({ id }) => id === value) ? value : ''} onChange={(event) => onChange(event.target.value)} fullWidth margin="dense" slotProps={{ inputLabel: { shrink: true }, select: { displayEmpty: true } }}>
      <MenuItem value="">Example names</MenuItem>
      {data.map(({ id, title, heldOn }) => <MenuItem key={id} value={id}>{dayText(heldOn as never, 'long')}: {title}</MenuItem>)}
    </TextField>
  );
}
