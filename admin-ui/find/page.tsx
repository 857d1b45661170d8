import { Box, Button, TextField } from '@mui/material';
import { useEffect, useRef, useState, type FormEvent } from 'react';
import { Title } from 'react-admin';
import { useSearchParams } from 'react-router';
import { useServer } from '../api/use-server.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Reading } from '../show/reading.tsx';
import { Found } from './found.tsx';
import type { FoundDocuments } from './types.ts';

/** One box for all papers of the accounts office. */
export function FindPage() {
  const [search, setSearch] = useSearchParams();
  const q = (search.get('q') ?? '').trim();
  const [typed, setTyped] = useState(q);
  const box = useRef<HTMLInputElement>(null);
  const asked = useServer<FoundDocuments>(q ? `/documents?q=${encodeURIComponent(q)}` : null);
  useEffect(() => setTyped(q), [q]);
  useEffect(() => box.current?.focus(), []);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setSearch(typed.trim() ? { q: typed.trim() } : {});
  };
  return (
    <>
      <Title title="Find a document" />
      <Box component="form" role="search" onSubmit={submit} sx={{ display: 'flex', gap: 1.5, flexWrap: 'wrap', alignItems: 'center', mb: 2 }}>
        <TextField label="Number, amount, name or check number" value={typed} inputRef={box} onChange={(event) => setTyped(event.target.value)} slotProps={{ htmlInput: { maxLength: 100, autoComplete: 'off' } }} sx={{ flex: '1 1 260px', maxWidth: 520 }} />
        <Button type="submit" variant="contained">Find</Button>
      </Box>
      {q ? <Reading of={asked}>{(found) => <Found q={q} found={found} />}</Reading> : <EmptyList>Finds invoices, credit memos, payments, receipts and deposit slips: by number, by amount (350 or 1,234.50), by the sponsor’s or payer’s name, or by the number of a check.</EmptyList>}
    </>
  );
}
