import { createContext, useContext } from 'react';
import type { NightBundle } from '../../server/domain/night/desk/bundle.ts';
import type { DeskEntry, DeskLine, NewDeskEntry } from '../../server/domain/night/desk/desk-entry.ts';

/** Reads only: no score, no foul sheet, no nagging. Tally: a spotter logs while the announcer reads paper. Full: everything. */
export type Way = 'reads' | 'tally' | 'full';

/** What every part of the page works with. */
export interface Desk {
  readonly bundle: NightBundle;
  /** the whole log as far as this device knows it, in its order; taken-back entries are in it */
  readonly lines: readonly DeskLine[];
  readonly way: Way;
  /** Answers once the entry is stored on this device; a full store or a broken one throws, and nothing is lost of what was there. */
  write(entry: NewDeskEntry): Promise<DeskEntry>;
  /** One tap: writes the entry that takes another back. */
  takeBack(entryId: string): Promise<void>;
  /** entries that the device could not store; they are in memory alone and wait for a person */
  readonly unstoredCount: number;
  /** who works here: a person's name, or the label of the table link */
  readonly workerName: string;
  readonly maySignOff: boolean;
  readonly isSignedOff: boolean;
  /** asks the server at once what has changed about the night */
  lookAgain?(): void;
}

export const DeskContext = createContext<Desk | null>(null);

export function useDesk(): Desk {
  const desk = useContext(DeskContext);
  if (!desk) throw new Error('this part of the page stands outside the desk');
  return desk;
}
