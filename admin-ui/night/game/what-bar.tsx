import { keyName, useKey } from '../keys.ts';
import type { What } from './whats.ts';

function WhatButton({ what, isChosen, onTap }: { what: What; isChosen: boolean; onTap: (what: What) => void }) {
  useKey(what.key, what.words, () => onTap(what));
  return (
    <button type="button" className="desk-button desk-what" aria-pressed={isChosen} onClick={() => onTap(what)}>
      {what.words} <kbd>{keyName(what.key)}</kbd>
    </button>
  );
}

/** What can happen in play; each keeps its place. */
export function WhatBar({ whats, title, chosen, onTap }: { whats: readonly What[]; title: string; chosen: What | null; onTap: (what: What) => void }) {
  return (
    <div className="desk-whats" role="group" aria-label={title}>
      {whats.map((what) => <WhatButton key={what.id} what={what} isChosen={chosen?.id === what.id} onTap={onTap} />)}
    </div>
  );
}
