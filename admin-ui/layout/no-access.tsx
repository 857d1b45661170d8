import { Typography } from '@mui/material';
import { Title } from 'react-admin';
import { Go } from '../fields/go.tsx';

export function NoAccess() {
  return (
    <>
      <Title title="Not open to your role" />
      <Typography sx={{ mb: 2 }}>Ask the athletic director, who can give you another role under “People and roles”.</Typography>
      <Go to="/">Go home</Go>
    </>
  );
}
