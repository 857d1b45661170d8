import { Alert } from '@mui/material';
import type { UseQueryResult } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { Waiting } from '../layout/waiting.tsx';

/** What was asked of the server: the bar while it is read, the sentence when it fails, the children when it is there. */
export function Reading<T>({ of, children }: { of: UseQueryResult<T, Error>; children: (data: T) => ReactNode }) {
  if (of.error) return <Alert severity="error" role="alert">{of.error.message}</Alert>;
  if (of.data === undefined) return <Waiting />;
  return <>{children(of.data)}</>;
}
