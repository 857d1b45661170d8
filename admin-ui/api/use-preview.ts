import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { ask } from './http.ts';

const PAUSE = 300;

/** What a form would do, asked of this address anew once typing pauses; nothing is done. No body: the form is not filled in yet. */
export function usePreview<View>(path: string, body: Record<string, unknown> | null) {
  const text = JSON.stringify(body);
  const [asked, setAsked] = useState(text);
  useEffect(() => {
    const timer = setTimeout(() => setAsked(text), PAUSE);
    return () => clearTimeout(timer);
  }, [text]);
  const query = useQuery<View, Error>({
    queryKey: ['server', 'preview', path, asked],
    queryFn: () => ask<View>(path, { method: 'POST', body: JSON.parse(asked) as unknown }),
    enabled: asked !== 'null',
    retry: false,
    placeholderData: keepPreviousData,
  });
  return { ...query, isSettled: asked === text && !query.isFetching };
}
