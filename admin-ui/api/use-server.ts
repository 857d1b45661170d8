import { useQuery } from '@tanstack/react-query';
import { ask } from './http.ts';

/** Reads an address that is no resource of its own: a packet, a log, a statement, the home screen. */
export function useServer<T>(path: string | null) {
  return useQuery<T, Error>({
    queryKey: ['server', path],
    queryFn: () => ask<T>(path!),
    enabled: path !== null,
    retry: false,
  });
}
