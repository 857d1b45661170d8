import { Button } from '@mui/material';
import { useSimpleFormIteratorItem } from 'react-admin';

/** Takes a row out of a list inside a form; the words stand with the row they take out. */
export function RemoveRow({ label }: { label: string }) {
  const { remove, index } = useSimpleFormIteratorItem();
  return (
    <Button variant="text" color="error" onClick={() => remove()} aria-label={`${label}, row ${index + 1}`} sx={{ px: 1 }}>
      {label}
    </Button>
  );
}
