import { Alert } from '@mui/material';

/** What a public school should have read before a prayer goes over its loudspeakers. */
export function PrayerCaution() {
  return (
    <Alert severity="warning" icon={false} sx={{ my: 1, width: '100%' }}>
      In <cite>Santa Fe Independent School District v. Doe</cite>, 530 U.S. 290 (2000), the Supreme Court found that a prayer over a public school’s
      loudspeakers before a game breaks the First Amendment, even when students vote for it. In <cite>Kennedy v. Bremerton School District</cite>,
      597 U.S. 507 (2022), it protected a coach’s own quiet prayer after a game, which is another matter than the school’s announcement. A court of
      appeals held in 2024 that the words over the loudspeakers at a state championship were the government’s own (<cite>Cambridge Christian School v.
      FHSAA</cite>, 11th Cir., No. 22-11222; the Supreme Court did not take the case). State law and private schools differ. Ask the district’s counsel
      before you turn this on.
    </Alert>
  );
}
