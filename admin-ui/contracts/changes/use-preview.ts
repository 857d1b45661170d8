import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { ask } from '../../api/http.ts';
import type { ChangePreview } from './types.ts';

const PAUSE = 300;

/** What a form would do, asked anew once typing pauses; nothing is done. No body: the form is not filled in yet. */
export function usePreview(path: string, body: Record<string, unknown> | null) {
  const text = JSON.stringify(body);
  const [asked, setAsked] = useState(text);
  useEffect(() => {
    const timer = setTimeout(() => setAsked(text), PAUSE);
    return () => clearTimeout(timer);
  }, [text]);
  const query = useQuery<ChangePreview, Error>({
    queryKey: ['server', 'preview', path, asked],
    queryFn: () => ask<ChangePreview>(`${path}/preview`, { method: 'POST', body: JSON.parse(asked) as unknown }),
    enabled: asked !== 'null',
    retry: false,
    placeholderData: keepPreviousData,
  });
  return { ...query, isSettled: asked === text && !query.isFetching };
}
