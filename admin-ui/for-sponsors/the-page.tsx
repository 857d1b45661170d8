import { createContext, useContext } from 'react';
import type { SponsorPage } from './types.ts';

export interface ThePage {
  page: SponsorPage;
  /** tells at the head of the page what was done */
  say: (sentence: string) => void;
}

const Here = createContext<ThePage | null>(null);

export const PageHere = Here.Provider;

export function useThePage(): ThePage {
  const here = useContext(Here);
  if (!here) throw new Error('this part stands outside of a sponsor’s page');
  return here;
}
