import { Alert } from '@mui/material';
import { useQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { useWatch } from 'react-hook-form';
import { ask } from '../../api/http.ts';
import type { Foreseen } from './types.ts';

const PAUSE = 400;

interface Props {
  path: string;
  /** what is sent; null while something is missing */
  body: (values: Record<string, unknown>) => Record<string, unknown> | null;
}

/** Says in words what the form would do, asked anew whenever it changes. */
export function ForeseenWords({ path, body }: Props) {
  const values = useWatch() as Record<string, unknown>;
  const wanted = JSON.stringify(body(values));
  const [settled, setSettled] = useState(wanted);
  useEffect(() => {
    const timer = setTimeout(() => setSettled(wanted), PAUSE);
    return () => clearTimeout(timer);
  }, [wanted]);
  const { data, error } = useQuery<Foreseen, Error>({
    queryKey: ['server', path, settled],
    queryFn: () => ask<Foreseen>(`${path}/preview`, { method: 'POST', body: JSON.parse(settled) }),
    enabled: settled !== 'null',
    retry: false,
  });
  if (settled === 'null') return <Alert severity="info" icon={false}>Fill in the form to see what it does on both ledgers.</Alert>;
  if (error) return <Alert severity="warning" icon={false} role="status">{error.message}</Alert>;
  return <Alert severity="info" icon={false} role="status">{data ? data.words.map((sentence) => <div key={sentence}>{sentence}</div>) : 'Working it out…'}</Alert>;
}
