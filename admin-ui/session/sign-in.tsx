import { Box, Paper, Typography } from '@mui/material';
import { useState } from 'react';
import { Form, HttpError, SaveButton, useLogin } from 'react-admin';
import { WordsInput } from '../inputs/words-input.tsx';
import { FormError } from '../forms/form-error.tsx';
import { Wordmark } from '../layout/wordmark.tsx';
import { BAR } from '../theme/palette.ts';

function sentenceOf(error: unknown): string {
  if (error instanceof HttpError && error.status === 401 && !error.message) return 'That e-mail and password do not belong together.';
  return error instanceof Error ? error.message : 'That e-mail and password do not belong together.';
}

export function SignIn() {
  const login = useLogin();
  const [working, setWorking] = useState(false);
  const submit = async (values: object) => {
    setWorking(true);
    try {
      await login(values);
      return undefined;
    } catch (error) {
      const errors = error instanceof HttpError ? error.body?.errors : undefined;
      return errors && Object.keys(errors).length > 0 ? errors : { root: { serverError: sentenceOf(error) } };
    } finally {
      setWorking(false);
    }
  };
  return (
    <Box sx={{ minHeight: '100vh', bgcolor: 'background.default', color: 'text.primary' }}>
      <Box component="header" sx={{ bgcolor: BAR.ground, borderBottom: `4px solid ${BAR.amber}`, px: { xs: 2, sm: 4 }, py: 1 }}>
        <Wordmark />
      </Box>
      <Box component="main" sx={{ display: 'grid', gridTemplateColumns: { xs: '1fr', md: '1fr 420px' }, gap: { xs: 3, md: 8 }, maxWidth: 1080, mx: 'auto', px: { xs: 2, sm: 4 }, py: { xs: 3, md: 9 } }}>
        <Box>
          <Typography variant="h1" sx={{ fontSize: { xs: '1.75rem', sm: '2.5rem' }, mb: 2, maxWidth: '18ch' }}>Every name you promised to read, read and proven.</Typography>
          <Typography sx={{ maxWidth: '52ch', fontSize: '1.125rem' }}>
            From the sales call to the packet on the scorer’s table, the log of the night and the invoice that goes with it.
          </Typography>
        </Box>
        <Paper variant="outlined" sx={{ p: 3 }}>
          <Form onSubmit={submit} record={{}}>
            <Typography variant="h2" sx={{ mb: 1 }}>Sign in</Typography>
            <WordsInput source="email" label="E-mail" type="email" autoComplete="username" required />
            <WordsInput source="password" label="Password" type="password" autoComplete="current-password" required />
            <FormError />
            <SaveButton label={working ? 'Signing in…' : 'Sign in'} alwaysEnable icon={<span />} fullWidth sx={{ mt: 1, '& .MuiButton-startIcon': { display: 'none' } }} />
          </Form>
        </Paper>
      </Box>
    </Box>
  );
}
