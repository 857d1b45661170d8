import { useEffect, useState } from 'react';
import { flushSync } from 'react-dom';

/** Whether the page is being put on paper: what is folded on a screen is unfolded for it, before the browser draws. */
export function usePrinting(): boolean {
  const [isPrinting, setPrinting] = useState(() => window.matchMedia('print').matches);
  useEffect(() => {
    const paper = window.matchMedia('print');
    const [begin, end, change] = [() => flushSync(() => setPrinting(true)), () => setPrinting(false), () => flushSync(() => setPrinting(paper.matches))];
    window.addEventListener('beforeprint', begin);
    window.addEventListener('afterprint', end);
    paper.addEventListener('change', change);
    return () => {
      window.removeEventListener('beforeprint', begin);
      window.removeEventListener('afterprint', end);
      paper.removeEventListener('change', change);
    };
  }, []);
  return isPrinting;
}
