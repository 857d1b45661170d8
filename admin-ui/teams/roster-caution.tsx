import { Alert } from '@mui/material';

/** Students' names are directory information only where the school says so and the family has not opted out. */
export function RosterCaution() {
  return (
    <Alert severity="info" icon={false} sx={{ mb: 1.5 }}>
      A student’s name may be announced only where the school has named it as directory information and the family has not opted out (FERPA,
      20 U.S.C. 1232g; 34 CFR 99.37). “Announce” holds the family’s choice; a student who opted out appears by name in no packet and no statement.
    </Alert>
  );
}
