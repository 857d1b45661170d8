import { useEffect, useState } from 'react';
import { ask } from '../api/http.ts';
import type { Preview } from './types.ts';

export interface PreviewAsked {
  text: string;
  secondText: string | null;
  language: 'en' | 'es';
  secondLanguage: 'en' | 'es' | null;
  moment: string | null;
  nightId: string | null;
}

const AFTER_MILLISECONDS = 400;

/** What a script says, asked for when the typing rests; an answer that comes late is left out. */
export function usePreview(asked: PreviewAsked): { preview: Preview | null; failed: string | null } {
  const [shown, setShown] = useState<{ preview: Preview | null; failed: string | null }>({ preview: null, failed: null });
  const body = JSON.stringify(asked);
  useEffect(() => {
    let isLate = false;
    const timer = setTimeout(() => {
      ask<Preview>('/scripts/preview', { method: 'POST', body: JSON.parse(body) as unknown })
        .then((preview) => !isLate && setShown({ preview, failed: null }))
        .catch((error: unknown) => !isLate && setShown({ preview: null, failed: error instanceof Error ? error.message : String(error) }));
    }, AFTER_MILLISECONDS);
    return () => {
      isLate = true;
      clearTimeout(timer);
    };
  }, [body]);
  return shown;
}
