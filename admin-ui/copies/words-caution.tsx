import { Alert } from '@mui/material';

/** An acknowledgment names; an advertisement persuades. */
export function WordsCaution() {
  return (
    <Alert severity="info" icon={false} sx={{ my: 1.5 }}>
      An acknowledgment names the sponsor: who, where, what they carry. Words that praise, compare, name a price, endorse or call to buy make it an
      advertisement, which may change how the money is taxed (26 CFR 1.513-4). This is not tax advice; ask the business office. The flag is never
      part of a sponsor’s message.
    </Alert>
  );
}
