import { TextField } from '@mui/material';

const LONGEST = 300;

/** Why competitors may stand beside each other this once. */
export function CompetitorReason({ value, onChange, isFirst = false }: { value: string; onChange: (reason: string) => void; isFirst?: boolean }) {
  return (
    <TextField label="Why competitors may stand there" value={value} onChange={(event) => onChange(event.target.value)} required multiline minRows={2} autoFocus={isFirst}
      helperText="Kept with the read, for whoever asks in spring. It is pinned there." slotProps={{ htmlInput: { maxLength: LONGEST } }} />
  );
}
