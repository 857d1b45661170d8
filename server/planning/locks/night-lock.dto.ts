import { TextField } from '../../platform/http/fields.ts';

export class LockNightDto {
  @TextField(1, 500, { optional: true, nullable: true }) note?: string | null;
}

export interface NightLockView {
  nightId: string;
  isLocked: boolean;
  /** its packet is issued, or a person said so; null where nothing is locked */
  why: 'issued' | 'person' | null;
  note: string | null;
}
