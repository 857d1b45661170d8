import { Button, type ButtonProps } from '@mui/material';
import { iMay } from '../../session/rights.ts';

/** To the page at the scorer's table; it fetches the night and keeps it on this device. */
export function OpenDeskButton({ nightId, title, variant = 'contained', size = 'medium' }: { nightId: string; title: string; variant?: ButtonProps['variant']; size?: ButtonProps['size'] }) {
  if (!iMay('log', 'show')) return null;
  return (
    <Button component="a" href={`/night/#open/${nightId}`} variant={variant} size={size} aria-label={`Open the desk: ${title}`} sx={{ whiteSpace: 'nowrap' }}>
      Open the desk
    </Button>
  );
}
