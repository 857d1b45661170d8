import { Link } from '@mui/material';
import type { ReactNode } from 'react';
import { Link as RouterLink } from 'react-router';

/** A link to the page of a record, or plain words where there is none. */
export function Go({ resource, id, to, children }: { resource?: string; id?: string | null; to?: string; children: ReactNode }) {
  const target = to ?? (resource && id ? `/${resource}/${id}/show` : null);
  if (!target) return <>{children}</>;
  return (
    <Link component={RouterLink} to={target} sx={{ display: 'inline-block', py: 0.25 }}>
      {children}
    </Link>
  );
}
