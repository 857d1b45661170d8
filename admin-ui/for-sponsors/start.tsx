import { Alert, Button, Typography } from '@mui/material';
import { useState } from 'react';
import { ask } from '../api/http.ts';
import { Shut } from './shut.tsx';

/** A click, not the opening of the address, begins the visit: mail programs open links to look at them. */
export function Start({ token, onOpened }: { token: string; onOpened: () => void }) {
  const [problem, setProblem] = useState<string | null>(null);
  const [isShut, setShut] = useState(false);
  const [working, setWorking] = useState(false);
  const start = async () => {
    setWorking(true);
    setProblem(null);
    await ask('/link-visits', { method: 'POST', body: { token } }).then(onOpened, (error: Error & { status?: number }) => {
      setProblem(error.message);
      setShut(error.status === 401);
    });
    setWorking(false);
  };
  if (isShut) return <Shut sentence={problem ?? ''} />;
  return (
    <>
      <Typography variant="h1" sx={{ mb: 1.5 }}>Your name at our games</Typography>
      <Typography sx={{ fontSize: '1.0625rem', mb: 2.5 }}>
        Here you see what was promised to your business, what was read on each night, what is still to come and what was paid, and you approve the words our announcer reads. No account is needed; keep this link to yourself.
      </Typography>
      {problem && <Alert severity="error" role="alert" sx={{ mb: 2 }}>{problem}</Alert>}
      <Button variant="contained" size="large" onClick={() => void start()} disabled={working} sx={{ minHeight: 52, px: 4 }}>
        {working ? 'Opening…' : 'Start'}
      </Button>
    </>
  );
}
