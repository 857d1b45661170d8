import { Button } from '@mui/material';
import { useSimpleFormIterator } from 'react-admin';

/** Adds a row to a list inside a form, saying what the row is. */
export function AddRow({ label }: { label: string }) {
  const { add } = useSimpleFormIterator();
  return (
    <Button variant="outlined" onClick={() => add()} sx={{ mt: 1 }}>
      {label}
    </Button>
  );
}
