import type { Day } from '../../domain/day.ts';
import type { GlanceCell, GlanceRow, GlanceState } from '../../domain/reports/glance.ts';
import { FORMATS } from '../../platform/files/file-answer.ts';
import type { ReportFormat } from '../../platform/files/file-answer.ts';
import { ChoiceField, IdField } from '../../platform/http/fields.ts';

export class BoardQuery {
  /** without it, the season of today, else the nearest */
  @IdField({ optional: true }) seasonId?: string;
  /** for the screen, or a file for a spreadsheet */
  @ChoiceField(FORMATS, { optional: true }) as?: ReportFormat;
}

/** Of which season and day a board is; null where there is no season yet. */
export interface OfSeason {
  seasonId: string | null;
  seasonName: string | null;
  today: Day;
}

export interface GlanceNightView {
  nightId: string;
  heldOn: Day;
  /** its own title, or whom we play */
  label: string;
  isOver: boolean;
  isSignedOff: boolean;
  cells: Record<GlanceRow, GlanceCell>;
}

export interface ToMend {
  nightId: string;
  heldOn: Day;
  label: string;
  row: GlanceRow;
  state: GlanceState;
  sentence: string;
  to: string;
}

export interface GlanceView extends OfSeason {
  nights: GlanceNightView[];
  /** nights on which a thing has to be seen to, or is worth a look */
  open: Record<GlanceRow, { mend: number; look: number }>;
  /** what to do first: what has to be seen to, by night, then what is worth a look */
  next: ToMend[];
  /** and so many more */
  nextLeftOff: number;
}
