import { useState } from 'react';

/** A dim gym or a bright field. */
export type Look = 'gym' | 'field';

const KEPT_AS = 'table-look';

function chosenLook(): Look {
  try {
    const kept = localStorage.getItem(KEPT_AS);
    if (kept === 'gym' || kept === 'field') return kept;
  } catch {
    // Storage may be closed to a page; the choice then lasts as long as the page.
  }
  return window.matchMedia('(prefers-color-scheme: light)').matches ? 'field' : 'gym';
}

export function showLook(look: Look = chosenLook()): void {
  document.documentElement.dataset['look'] = look;
}

export function useLook(): [Look, (look: Look) => void] {
  const [look, setLook] = useState(chosenLook);
  return [look, (next) => {
    setLook(next);
    showLook(next);
    try {
      localStorage.setItem(KEPT_AS, next);
    } catch {
      // As above.
    }
  }];
}
