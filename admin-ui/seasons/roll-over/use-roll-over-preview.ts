import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { ask } from '../../api/http.ts';
import type { RollOverView } from './types.ts';

const PAUSE = 400;

/** What the form would make, asked anew once typing pauses; nothing is made. */
export function useRollOverPreview(seasonId: string, body: Record<string, unknown> | null) {
  const text = JSON.stringify(body);
  const [asked, setAsked] = useState(text);
  useEffect(() => {
    const timer = setTimeout(() => setAsked(text), PAUSE);
    return () => clearTimeout(timer);
  }, [text]);
  const query = useQuery<RollOverView, Error>({
    queryKey: ['server', 'roll-over', seasonId, asked],
    queryFn: () => ask<RollOverView>(`/seasons/${seasonId}/roll-over-previews`, { method: 'POST', body: JSON.parse(asked) as unknown }),
    enabled: asked !== 'null',
    retry: false,
    placeholderData: keepPreviousData,
  });
  return { ...query, isSettled: asked === text && !query.isFetching };
}
