import type { WindowKind } from './sport-rules.ts';

/** The kind of a window's key: `timeOut2` is a `timeOut`. */
export function kindOfWindow(key: string): string {
  const kind = key.replace(/\d+$/, '');
  return kind === 'timeout' ? 'timeOut' : kind;
}

/**
 * The windows of a read kind that a promise is read in, in the order of the kind: those of the kinds the promise names,
 * or all of them where it names none.
 *
 * @param windows kinds or keys of windows, as a read kind names them
 */
export function windowsNarrowed(windows: readonly string[], to: readonly WindowKind[]): string[] {
  return to.length === 0 ? [...windows] : windows.filter((window) => to.includes(kindOfWindow(window) as WindowKind));
}
