import { Typography } from '@mui/material';
import { Title } from 'react-admin';
import { Go } from '../fields/go.tsx';

export function NotFound() {
  return (
    <>
      <Title title="No such page" />
      <Typography sx={{ mb: 2 }}>The address leads nowhere. It may be mistyped, or what it showed was removed.</Typography>
      <Go to="/">Go home</Go>
    </>
  );
}
