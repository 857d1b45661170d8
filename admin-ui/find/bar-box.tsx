import { Box, Button, InputBase } from '@mui/material';
import { useState, type FormEvent } from 'react';
import { useNavigate } from 'react-router';
import { iMay } from '../session/rights.ts';
import { BAR } from '../theme/palette.ts';

/** The box in the bar; what it finds stands on a page of its own. */
export function BarBox() {
  const [typed, setTyped] = useState('');
  const navigate = useNavigate();
  if (!iMay('documents', 'list')) return null;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (typed.trim() === '') return;
    void navigate(`/find?q=${encodeURIComponent(typed.trim())}`);
    setTyped('');
  };
  return (
    <>
    <Button variant="outlined" onClick={() => void navigate('/find')} sx={{ color: BAR.ink, borderColor: BAR.softInk, px: 1.5, minWidth: 0, '&.Mui-focusVisible': { outlineColor: BAR.amber }, '@media (min-width: 768px)': { display: 'none' } }}>Find</Button>
    <Box component="form" role="search" aria-label="Find a document" onSubmit={submit} sx={{ display: 'none', '@media (min-width: 768px)': { display: 'block' } }}>
      <InputBase
        value={typed}
        onChange={(event) => setTyped(event.target.value)}
        placeholder="Find a document"
        inputProps={{ 'aria-label': 'Find a document', maxLength: 100, autoComplete: 'off' }}
        sx={{ color: BAR.ink, border: 1, borderColor: BAR.softInk, borderRadius: 1, px: 1.5, minHeight: 44, width: { xs: 150, lg: 220 }, '& input::placeholder': { color: BAR.softInk, opacity: 1 }, '&.Mui-focused': { outline: `3px solid ${BAR.amber}`, outlineOffset: 2 } }}
      />
    </Box>
    </>
  );
}
