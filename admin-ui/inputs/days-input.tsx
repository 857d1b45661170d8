import { Box, Button, TextField, Typography } from '@mui/material';
import { useId, useState } from 'react';
import { useInput } from 'react-admin';
import { dayText } from '../format/day.ts';

/** A list of days: each is added and taken out by itself. */
export function DaysInput({ source, label, helperText }: { source: string; label: string; helperText?: string }) {
  const { field } = useInput<string[]>({ source, defaultValue: [] });
  const [day, setDay] = useState('');
  const labelId = useId();
  const days = (field.value as string[] | null) ?? [];
  const add = (): void => {
    if (day !== '' && !days.includes(day)) field.onChange([...days, day].sort());
    setDay('');
  };
  return (
    <Box role="group" aria-labelledby={labelId} sx={{ my: 1 }}>
      <Typography id={labelId} sx={{ fontWeight: 600 }}>{label}</Typography>
      {helperText && <Typography variant="body2" sx={{ color: 'text.secondary' }}>{helperText}</Typography>}
      <Box sx={{ display: 'flex', flexWrap: 'wrap', gap: 1, mt: 1 }}>
        {days.map((one) => (
          <Button key={one} variant="outlined" size="small" onClick={() => field.onChange(days.filter((other) => other !== one))} aria-label={`Take out ${dayText(one)}`}>
            {dayText(one)} ✕
          </Button>
        ))}
      </Box>
      <Box sx={{ display: 'flex', flexWrap: 'wrap', gap: 1, mt: 1, alignItems: 'center' }}>
        <TextField type="date" size="small" label="Day" value={day} onChange={(event) => setDay(event.target.value)} slotProps={{ inputLabel: { shrink: true } }} sx={{ m: 0, width: 180 }} />
        <Button variant="outlined" onClick={add} disabled={day === ''}>Add the day</Button>
      </Box>
    </Box>
  );
}
