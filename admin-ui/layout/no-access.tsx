import { Button, Typography } from '@mui/material';
import { Title } from 'react-admin';
import { useNavigate } from 'react-router';
import { Go } from '../fields/go.tsx';

export function NoAccess() {
  const navigate = useNavigate();
  return (
    <>
      <Title title="Not open to your role" />
      <Typography sx={{ mb: 2 }}>Ask the athletic director, who can give you another role under “People and roles”.</Typography>
      <Button variant="outlined" onClick={() => void navigate(-1)} sx={{ mr: 2 }}>Back</Button>
      <Go to="/">Go home</Go>
    </>
  );
}
