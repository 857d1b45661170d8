import { Alert } from '@mui/material';

/** 26 U.S.C. 513(i)(2)(B)(i). */
export const VariesCaution = () => (
  <Alert severity="warning" icon={false} sx={{ width: '100%', my: 1 }}>
    A payment that goes up and down with attendance, ratings or how many see or hear it is no qualified sponsorship payment (26 U.S.C. 513(i)(2)(B)(i)). That the price depends on the game being held is fine. This is not tax advice: ask your tax adviser.
  </Alert>
);
