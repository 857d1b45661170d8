import type { Day } from '../../domain/day.ts';
import type { Repair, Risk } from '../../domain/reports/at-risk.ts';
import type { Counting } from '../../domain/sponsorship/contract-terms.ts';
import type { PlacesOfMonth } from '../../domain/reports/inventory.ts';
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

/** One commitment that may not be given in full. Counts in reads, chances from 0 to 1. */
export interface AtRiskLine {
  contractId: string;
  contractNumber: string | null;
  title: string;
  sponsorId: string;
  sponsorName: string;
  commitmentId: string;
  readKindName: string;
  counting: Counting;
  promised: number;
  /** given and made good */
  given: number;
  owed: number;
  expectedByNow: number;
  behind: number;
  planned: number;
  shortfall: number;
  brokenFloors: number;
  heldOn: Day | null;
  heldBecause: string | null;
  chanceAllGiven: number | null;
  expectedFinal: number | null;
  /** on what the chance rests */
  forecastWords: string | null;
  risks: Risk[];
  openCents: number;
  /** what nothing has earned yet times the chance that not all is given */
  atStakeCents: number;
  repair: Repair;
  /** the page where it is done */
  to: string;
}

export interface AtRiskView extends OfSeason {
  /** most at stake first */
  lines: AtRiskLine[];
  /** commitments of the season's signed contracts, at risk or not */
  commitments: number;
  contractsAtRisk: number;
  atStakeCents: number;
  owed: number;
  shortfall: number;
}

export interface InventoryView extends OfSeason {
  kinds: { readKindId: string; readKindName: string }[];
  /** by month: all kinds together, then each by itself */
  months: PlacesOfMonth[];
  /** promised and without a place yet, by kind */
  unplaced: { readKindId: string; readKindName: string; reads: number }[];
}
