import { Box } from '@mui/material';

/** A day or a count is not broken over two lines. */
export const Whole = ({ children }: { children: string }) => <Box component="span" sx={{ whiteSpace: 'nowrap' }}>{children}</Box>;
