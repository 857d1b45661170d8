import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { ask } from '../api/http.ts';
import type { PromiseCheck } from './types.ts';

/** Asks whether reads fit; a question that is asked anew before it was answered is taken back. */
export function usePromiseCheck(path: string, body: object | null, version = 0) {
  return useQuery<PromiseCheck, Error>({
    queryKey: ['promise', path, body, version],
    queryFn: ({ signal }) => ask<PromiseCheck>(path, { method: 'POST', body: body ?? {}, signal }),
    enabled: body !== null,
    placeholderData: keepPreviousData,
    staleTime: 0,
    retry: false,
  });
}
