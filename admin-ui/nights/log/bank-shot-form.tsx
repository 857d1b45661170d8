import { Box, Button, MenuItem, TextField } from '@mui/material';
import { useState, type FormEvent } from 'react';
import type { GameSheet } from '../../../server/domain/packet/packet.ts';
import type { EntryToLog } from './send-entry.ts';

/** A bank shot: in which game, by which team, the shooter's number. */
export function BankShotForm({ games, add, busy }: { games: readonly GameSheet[]; add: (entry: EntryToLog) => Promise<boolean>; busy: boolean }) {
  const [gameId, setGameId] = useState(games[0]?.gameId ?? '');
  const game = games.find((one) => one.gameId === gameId) ?? games[0];
  const [teamId, setTeamId] = useState(game?.home.teamId ?? '');
  const [number, setNumber] = useState('');
  const known = /^[0-9]{1,3}$/.test(number);
  if (!game) return null;
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (!known) return;
    const done = await add({ kind: 'happening', gameId: game.gameId, teamId: teamId || game.home.teamId, playerNumber: number, detail: { happening: 'bankShot' } });
    if (done) setNumber('');
  };
  return (
    <Box component="form" onSubmit={(event) => void submit(event)} sx={{ display: 'flex', gap: 1.5, flexWrap: 'wrap', alignItems: 'flex-start', mb: 1 }}>
      {games.length > 1 && (
        <TextField select label="Game" value={game.gameId} onChange={(event) => { setGameId(event.target.value); setTeamId(''); }} sx={{ flex: '1 1 180px', width: 'auto' }}>
          {games.map((one) => <MenuItem key={one.gameId} value={one.gameId}>{one.title}</MenuItem>)}
        </TextField>
      )}
      <TextField select label="Team" value={teamId || game.home.teamId} onChange={(event) => setTeamId(event.target.value)} sx={{ flex: '1 1 180px', width: 'auto' }}>
        {[game.home, game.visitors].map((team) => <MenuItem key={team.teamId} value={team.teamId}>{team.schoolName} {team.nickname}</MenuItem>)}
      </TextField>
      <TextField label="Shooter’s number" value={number} onChange={(event) => setNumber(event.target.value)} error={number !== '' && !known} helperText={number !== '' && !known ? 'One to three digits.' : ''} slotProps={{ htmlInput: { inputMode: 'numeric', maxLength: 3 } }} sx={{ flex: '0 1 170px', width: 'auto' }} />
      <Button type="submit" variant="contained" disabled={busy || !known} sx={{ minHeight: 56, mt: 1 }}>Log the bank shot</Button>
    </Box>
  );
}
