import { Alert, Button, Typography } from '@mui/material';
import { useState } from 'react';
import { ask } from '../api/http.ts';

/** A click, not the opening of the address, begins the visit: mail programs open links to look at them. */
export function Start({ token, onOpened }: { token: string; onOpened: () => void }) {
  const [problem, setProblem] = useState<string | null>(null);
  const [working, setWorking] = useState(false);
  const start = async () => {
    setWorking(true);
    setProblem(null);
    await ask('/link-visits', { method: 'POST', body: { token } }).then(onOpened, (error: Error) => setProblem(error.message));
    setWorking(false);
  };
  return (
    <>
      <Typography variant="h1" sx={{ mb: 1.5 }}>Your words at our games</Typography>
      <Typography sx={{ fontSize: '1.0625rem', mb: 2.5 }}>
        Here you read what our announcer will say for your business, say yes to it, or ask for a change. No account is needed; keep this link to yourself.
      </Typography>
      {problem && <Alert severity="error" role="alert" sx={{ mb: 2 }}>{problem}</Alert>}
      <Button variant="contained" size="large" onClick={() => void start()} disabled={working} sx={{ minHeight: 52, px: 4 }}>
        {working ? 'Opening…' : 'Start'}
      </Button>
    </>
  );
}
