import { Alert, Typography } from '@mui/material';
import { useEffect } from 'react';
import { Contacts } from './contacts.tsx';
import { knownSchool } from './known-school.ts';

/** A link that opens nothing: what can be done about it, and nothing of what it opened once. */
export function Shut({ sentence }: { sentence: string }) {
  const school = knownSchool();
  useEffect(() => void (document.title = 'Rafterline'), []);
  return (
    <>
      <Typography variant="h1" sx={{ mb: 1.5 }}>This link does not open</Typography>
      <Alert severity="info" role="alert" icon={false} sx={{ mb: 2 }}>{sentence}</Alert>
      <Typography sx={{ mb: 2 }}>
        Links end after a while, and the school can end one at any time; nothing of yours is lost by that. {school ? `Call ${school.departmentName}, and you get a new one.` : 'Call the athletic department that sent it to you, and you get a new one.'}
      </Typography>
      {school && <Contacts contacts={school.contacts} />}
    </>
  );
}
