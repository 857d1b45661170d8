import type { EntryKind, ReadOutcome } from '../log-entry.ts';

/**
 * One entry as a device writes and sends it. Nothing of it changes afterwards; it is sent again, byte for byte, until the
 * server has answered for it.
 */
export interface DeskEntry {
  /** UUID v7 made by the device */
  readonly id: string;
  readonly deviceId: string;
  /** the place on this device for this night, 1 and up */
  readonly sequence: number;
  readonly kind: EntryKind;
  readonly outcome: ReadOutcome | null;
  readonly reason: string | null;
  readonly gameId: string | null;
  readonly cueKey: string | null;
  readonly placementId: string | null;
  readonly commitmentId: string | null;
  readonly windowKey: string | null;
  readonly teamId: string | null;
  readonly playerNumber: string | null;
  /** as the sheet names it: "1st quarter", "overtime 2" */
  readonly period: string | null;
  /** what the game clock showed, `M:SS` */
  readonly clock: string | null;
  readonly detail: Readonly<Record<string, unknown>> | null;
  readonly happeningEntryId: string | null;
  readonly takesBackEntryId: string | null;
  /** by the device's clock; only shown */
  readonly occurredAt: string;
}

/** What a person says; id, device, place and moment are added when it is stored. */
export type NewDeskEntry = Pick<DeskEntry, 'kind'> & Partial<Omit<DeskEntry, 'id' | 'deviceId' | 'sequence' | 'occurredAt' | 'kind'>>;

/** Where an entry stands, as the screen says it: on this device, on the server, needs attention. */
export type EntryPlace = 'onDevice' | 'onServer' | 'needsAttention';

/** A line of the desk's log: own entries and, when connected, those of the other devices. */
export interface DeskLine extends DeskEntry {
  readonly place: EntryPlace;
  /** its number in the night's log; null until the server has it */
  readonly number: number | null;
  readonly isOwn: boolean;
  /** why it needs attention, in a sentence */
  readonly sentence: string | null;
}
