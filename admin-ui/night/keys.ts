import { createContext, useContext, useLayoutEffect, useRef, useSyncExternalStore } from 'react';

/** One key and what it does, as the list of keys shows it. */
export interface KeyMeaning {
  /** as `KeyboardEvent.key` names it: `n`, `N` with shift, `Escape`, `?` */
  readonly key: string;
  readonly label: string;
}

interface Bound extends KeyMeaning {
  readonly layer: number;
  readonly run: () => void;
}

/** 0 is the desk itself; a sheet in front of it is a layer of its own, and only the keys of the layer in front are heard. */
export const KeyLayer = createContext(0);
/** The keys of a part that can only be looked at rest. */
export const KeysRest = createContext(false);
let layersInFront: readonly number[] = [];

/** The last one bound to a key is the one that hears it, so a sheet in front takes over from what lies behind. */
let bound: readonly Bound[] = [];
let meanings: readonly KeyMeaning[] = [];
let deskMeanings: readonly KeyMeaning[] = [];
let areOn = true;
const watchers = new Set<() => void>();

const isInFront = (one: Bound): boolean => one.layer === Math.max(0, ...layersInFront);

const meaningsOf = (several: readonly Bound[]): KeyMeaning[] =>
  [...new Map(several.map((one) => [one.key, one])).values()].map(({ key, label }) => ({ key, label }));

function tell(next: readonly Bound[]): void {
  bound = next;
  meanings = meaningsOf(bound.filter(isInFront));
  deskMeanings = meaningsOf(bound.filter((one) => one.layer === 0));
  for (const watcher of watchers) watcher();
}

const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && (target.isContentEditable || /^(INPUT|TEXTAREA|SELECT)$/.test(target.tagName)) && !/^(checkbox|radio|button)$/.test(target.getAttribute('type') ?? '');

const pressesByItself = (target: EventTarget | null): boolean => target instanceof HTMLElement && target.closest('button, a, summary, [role=button]') !== null;

function hear(event: KeyboardEvent): void {
  if (event.ctrlKey || event.altKey || event.metaKey || event.repeat || event.defaultPrevented || event.isComposing) return;
  if (event.key !== 'Escape' && (!areOn || isTyping(event.target))) return;
  if ((event.key === 'Enter' || event.key === ' ') && pressesByItself(event.target)) return;
  const one = bound.findLast((candidate) => candidate.key === event.key && isInFront(candidate));
  if (!one) return;
  event.preventDefault();
  one.run();
}

if (typeof window !== 'undefined') window.addEventListener('keydown', hear);

/**
 * Gives an action its key while the part of the page that calls this is there. Show the key beside the button:
 * `<kbd>{keyName('n')}</kbd>`. No key works while somebody types into a field, save Escape.
 *
 * The page itself has `?` (keys), `l` (the log), `z` (take back my last entry), `q` (requests), `o` (sign-off), `v` (the look); the rest is free.
 *
 * @param key as `KeyboardEvent.key` names it; null for none at this moment
 */
export function useKey(key: string | null, label: string, action: () => void): void {
  const layer = useContext(KeyLayer);
  const rests = useContext(KeysRest);
  const latest = useRef(action);
  useLayoutEffect(() => {
    latest.current = action;
  });
  useLayoutEffect(() => {
    if (key === null || rests) return undefined;
    const one: Bound = { key, label, layer, run: () => latest.current() };
    tell([...bound, one]);
    return () => tell(bound.filter((other) => other !== one));
  }, [key, label, layer, rests]);
}

/** While the part that calls this is there, keys of what lies behind it rest. */
export function useLayerInFront(layer: number): void {
  useLayoutEffect(() => {
    layersInFront = [...layersInFront, layer];
    tell(bound);
    return () => {
      layersInFront = layersInFront.toSpliced(layersInFront.lastIndexOf(layer), 1);
      tell(bound);
    };
  }, [layer]);
}

const watch = (watcher: () => void) => {
  watchers.add(watcher);
  return () => void watchers.delete(watcher);
};

/** All keys that do something in the layer in front, or on the desk behind it. */
export function useKeyMeanings(where: 'in front' | 'behind' = 'in front'): readonly KeyMeaning[] {
  return useSyncExternalStore(watch, () => (where === 'behind' ? deskMeanings : meanings));
}

/** Single letters can get in the way of speech input, so they can be switched off. */
export function useKeysAreOn(): [boolean, (on: boolean) => void] {
  const isOn = useSyncExternalStore(watch, () => areOn);
  return [isOn, (on) => {
    areOn = on;
    for (const watcher of watchers) watcher();
  }];
}

/** How a key is written on the screen: "N", "Shift N", "Esc". */
export function keyName(key: string): string {
  if (key === 'Escape') return 'Esc';
  if (key === ' ') return 'Space';
  return /^[A-Z]$/.test(key) ? `Shift ${key}` : key.length === 1 ? key.toUpperCase() : key;
}
