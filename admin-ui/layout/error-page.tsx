import { Alert, Button } from '@mui/material';
import { Title } from 'react-admin';
import { Go } from '../fields/go.tsx';

export function ErrorPage({ error }: { error?: unknown }) {
  return (
    <>
      <Title title="This page broke" />
      <Alert severity="error" role="alert" sx={{ mb: 2 }}>
        Nothing you saved is lost. Load the page again; if it breaks again, tell the person who runs the server what you did last.
        {error instanceof Error && <p>What it said: {error.message}</p>}
      </Alert>
      <Button variant="contained" onClick={() => window.location.reload()} sx={{ mr: 2 }}>Load the page again</Button>
      <Go to="/">Go home</Go>
    </>
  );
}
