import { ENTRY_KINDS } from '../../log-entry.ts';
import type { DeskEntry } from '../desk-entry.ts';

/** What a device writes out so that entries can go another way: on a stick, by mail, into another device. */
export interface HeldFile {
  readonly format: 'rafterline-table-entries';
  readonly version: 1;
  readonly nightId: string;
  readonly nightTitle: string;
  readonly entries: readonly DeskEntry[];
}

export function heldFile(nightId: string, nightTitle: string, entries: readonly DeskEntry[]): HeldFile {
  return { format: 'rafterline-table-entries', version: 1, nightId, nightTitle, entries: entries.toSorted(byDeviceAndSequence) };
}

function byDeviceAndSequence(a: DeskEntry, b: DeskEntry): number {
  return a.deviceId === b.deviceId ? a.sequence - b.sequence : a.deviceId < b.deviceId ? -1 : 1;
}

const ID = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/;
const TEXTS = ['outcome', 'reason', 'gameId', 'cueKey', 'placementId', 'commitmentId', 'windowKey', 'teamId', 'playerNumber', 'period', 'clock', 'happeningEntryId', 'takesBackEntryId'] as const;

/** The entries of a file for this night, or a sentence that says why it cannot be taken. A file is taken whole or not at all. */
export function entriesOfFile(text: string, nightId: string): { readonly entries: readonly DeskEntry[] } | { readonly sentence: string } {
  const file = parsed(text) as Partial<HeldFile> | null;
  if (file?.format !== 'rafterline-table-entries' || !Array.isArray(file.entries)) return { sentence: 'This is no file of table entries.' };
  if (file.version !== 1) return { sentence: 'This file was written by a newer page. Load this page anew, then try again.' };
  if (file.nightId !== nightId) return { sentence: `This file is of another night${typeof file.nightTitle === 'string' ? `: ${file.nightTitle}` : ''}.` };
  if (!file.entries.every(isEntry)) return { sentence: 'This file is damaged: one of its entries cannot be read. Nothing was taken from it.' };
  return { entries: file.entries };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

function isEntry(value: unknown): value is DeskEntry {
  if (value === null || typeof value !== 'object') return false;
  const entry = value as Record<string, unknown>;
  const isDetail = entry['detail'] === null || (typeof entry['detail'] === 'object' && !Array.isArray(entry['detail']));
  return (
    [entry['id'], entry['deviceId']].every((id) => typeof id === 'string' && ID.test(id)) &&
    Number.isInteger(entry['sequence']) && Number(entry['sequence']) > 0 &&
    (ENTRY_KINDS as readonly unknown[]).includes(entry['kind']) &&
    typeof entry['occurredAt'] === 'string' && isDetail &&
    TEXTS.every((field) => entry[field] === null || typeof entry[field] === 'string')
  );
}
