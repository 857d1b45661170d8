import { Button } from '@mui/material';
import { useState } from 'react';
import { Rows, type RowsProps } from '../lists/rows.tsx';
import { numberText } from '../words/count.ts';

const FIRST_ROWS = 40;

/** Rows of which the first are shown, and all when asked for. */
export function LongRows<T extends object>(props: RowsProps<T>) {
  const [isWhole, setIsWhole] = useState(false);
  const { rows } = props;
  return (
    <>
      <Rows<T> {...props} rows={isWhole ? rows : rows.slice(0, FIRST_ROWS)} />
      {!isWhole && rows.length > FIRST_ROWS && <Button onClick={() => setIsWhole(true)} sx={{ mt: 1 }}>Show all {numberText(rows.length)}</Button>}
    </>
  );
}
