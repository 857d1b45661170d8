import type { NotReadReason, ReadOutcome } from '../../log-entry.ts';
import type { DeskCue } from '../bundle.ts';
import type { NewDeskEntry } from '../desk-entry.ts';
import type { QueuedMention } from './mention-queue.ts';

/** How a cue was read, where it is not simply "in full, in its own window". */
export interface HowRead {
  readonly outcome?: ReadOutcome;
  readonly reason?: NotReadReason | null;
  /** for the reason `other`; null where nothing more is said */
  readonly words?: string | null;
  /** the window it was read in; null for its own */
  readonly windowKey?: string | null;
  readonly fromPaper?: boolean;
}

function detailOf({ words = null, fromPaper = false }: HowRead): Record<string, unknown> {
  return { ...(words === null || words.trim() === '' ? {} : { words: words.trim() }), ...(fromPaper ? { fromPaper: true } : {}) };
}

const orNull = (detail: Record<string, unknown>): Record<string, unknown> | null => (Object.keys(detail).length === 0 ? null : detail);

/** The entry that says how a cue was read. */
export function readEntry(cue: DeskCue, how: HowRead = {}): NewDeskEntry {
  return {
    kind: 'read', outcome: how.outcome ?? 'given', reason: how.reason ?? null, gameId: cue.gameId, cueKey: cue.cueKey,
    placementId: cue.placementId, commitmentId: cue.commitmentId, windowKey: how.windowKey ?? cue.windowKey, detail: orNull(detailOf(how)),
  };
}

/** The entry that says how a mention was given; it names every happening it answers. */
export function mentionEntry({ mention, happeningEntryIds }: Pick<QueuedMention, 'mention' | 'happeningEntryIds'>, how: HowRead = {}): NewDeskEntry {
  const several = happeningEntryIds.length > 1 ? { happeningEntryIds } : {};
  return {
    kind: 'mention', outcome: how.outcome ?? 'given', reason: how.reason ?? null, gameId: mention.gameId, cueKey: mention.cueKey, commitmentId: mention.commitmentId,
    windowKey: how.windowKey ?? null, happeningEntryId: happeningEntryIds[0] ?? null, detail: orNull({ ...several, ...detailOf(how) }),
  };
}
