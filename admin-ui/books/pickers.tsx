import { MenuItem, TextField } from '@mui/material';
import { useEffect, useState } from 'react';
import { useServer } from '../api/use-server.ts';

const WIDE = { minWidth: 0, width: { xs: '100%', sm: 240 } } as const;

interface Choice {
  id: string;
  name: string;
}

interface Picked {
  label: string;
  value: string | undefined;
  onChange: (value: string) => void;
}

/** One of several; nothing is chosen until the server has answered what it shows. */
export function Pick({ label, value, choices, onChange }: Picked & { choices: readonly Choice[] }) {
  const shown = choices.some((choice) => choice.id === value) ? value : '';
  return (
    <TextField select label={label} value={shown ?? ''} onChange={(event) => onChange(event.target.value)} sx={WIDE}>
      {choices.map((choice) => <MenuItem key={choice.id} value={choice.id}>{choice.name}</MenuItem>)}
    </TextField>
  );
}

/** Whose books: only sellers whose books are kept here have any. */
export function SellerPick(props: Omit<Picked, 'label'>) {
  const sellers = useServer<{ data: (Choice & { keepsBooksHere: boolean })[] }>('/sellers?perPage=100&sort=name');
  return <Pick label="Seller of record" choices={(sellers.data?.data ?? []).filter((seller) => seller.keepsBooksHere)} {...props} />;
}

/** A day is asked for once it is whole, so that a year typed digit by digit asks nothing on the way. */
export function DayPick({ label, value, onChange }: Picked) {
  const [typed, setTyped] = useState(value ?? '');
  useEffect(() => setTyped(value ?? ''), [value]);
  const type = (day: string) => {
    setTyped(day);
    if (day >= '1900-01-01' && day <= '2199-12-31') onChange(day);
  };
  return <TextField type="date" label={label} value={typed} onChange={(event) => type(event.target.value)} slotProps={{ inputLabel: { shrink: true } }} sx={{ ...WIDE, width: { xs: '100%', sm: 180 } }} />;
}
