import type { Instant } from '../../domain/instant.ts';
import { ChoiceField, CountField, IdField, ListOf, OptionalTextField } from '../../platform/http/fields.ts';
import { LogEntryDto } from './log.dto.ts';
import type { EntryResult } from './log.dto.ts';

export class HeldEntryDto extends LogEntryDto {
  @IdField() deviceId: string;
}

/** A file that a device wrote out of the entries it could not bring to the server. */
export class HeldFileDto {
  @ChoiceField(['rafterline-table-entries']) format: 'rafterline-table-entries';
  @CountField(1, 1) version: number;
  @IdField() nightId: string;
  @OptionalTextField(300) nightTitle?: string | null;
  @ListOf(() => HeldEntryDto, { least: 1, most: 2000 }) entries: HeldEntryDto[];
  /** why they come now; needed after sign-off, where they are amendments */
  @OptionalTextField(300) reason?: string | null;
}

export interface ImportView {
  results: EntryResult[];
  /** what became of them, in words */
  sentence: string;
}

export class SettleAsideDto {
  @ChoiceField(['takeIn', 'setAside']) answer: 'takeIn' | 'setAside';
  /** in the log beside it; needed after sign-off */
  @OptionalTextField(300) reason?: string | null;
}

/** An entry that arrived under an id, or a place on its device, that was taken already. */
export interface AsideView {
  id: string;
  recordedAt: Instant;
  /** what it says */
  sentence: string;
  /** the entry that was there already; null where it is in another night's log */
  inLog: { number: number; sentence: string } | null;
  differences: readonly string[];
  state: 'waiting' | 'takenIn' | 'setAside';
  /** of the log entry that settled it */
  settledNumber: number | null;
}
