import { Box, Link, Typography } from '@mui/material';
import type { ContactOfSchool } from './types.ts';

/** Whom to call; on a phone a touch does it. */
export function Contacts({ contacts }: { contacts: readonly ContactOfSchool[] }) {
  return (
    <Box component="ul" sx={{ listStyle: 'none', p: 0, m: 0 }}>
      {contacts.map(({ name, contactName, phone, email }) => (
        <Box component="li" key={name} sx={{ mb: 1.5 }}>
          <Typography sx={{ fontWeight: 600 }}>{name}</Typography>
          {contactName && <Typography>{contactName}</Typography>}
          {phone && <Typography><Link href={`tel:${phone.replace(/[^+\d]/g, '')}`} sx={{ display: 'inline-block', py: 1 }}>{phone}</Link></Typography>}
          {email && <Typography><Link href={`mailto:${email}`} sx={{ display: 'inline-block', py: 1, overflowWrap: 'anywhere' }}>{email}</Link></Typography>}
          {!phone && !email && <Typography sx={{ color: 'text.secondary' }}>Call the school’s athletic office.</Typography>}
        </Box>
      ))}
    </Box>
  );
}
