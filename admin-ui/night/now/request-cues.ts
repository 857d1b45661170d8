import type { DeskCue } from '../../../server/domain/night/desk/bundle.ts';

/** A request that was approved, as a cue of the night. */
export interface RequestCue {
  readonly cue: DeskCue;
  readonly requestId: string;
  /** false once it has been read or has expired */
  readonly isOpen: boolean;
}
