import { WINDOW_KINDS } from '../../domain/season/sport-profile.ts';
import type { WindowKind } from '../../domain/season/sport-profile.ts';
import type { Obstacle } from '../../domain/sponsorship/company/in-the-way.ts';
import { REACHES } from '../../domain/sponsorship/company/rights.ts';
import type { Reach, RightTerms } from '../../domain/sponsorship/company/rights.ts';
import { ChoiceField, ChoicesField, DayField, IdField, IdsField, TextField } from '../../platform/http/fields.ts';

const OPEN = { optional: true, nullable: true };

/** An exclusive right as a draft of a contract or an offer names it. An id that the draft has already keeps its line. */
export class ExclusivityDto {
  @IdField(OPEN) id?: string | null;
  @IdField() categoryId: string;
  @ChoiceField(REACHES) reach: Reach;
  @IdField(OPEN) schoolId?: string | null;
  @DayField() startsOn: string;
  @DayField() endsOn: string;
  @IdsField(60, { optional: true }) gameIds?: string[];
  @ChoicesField(WINDOW_KINDS, { optional: true }) windowKinds?: WindowKind[];
}

/** Why it is allowed all the same, and who said so; against what is in the way by these ids. */
export class CompanyExceptionDto {
  @IdsField(60) againstIds: string[];
  @TextField(1, 500) reason: string;
  @TextField(1, 120) approvedByName: string;
  @DayField() approvedOn: string;
}

export interface ObstacleView {
  againstId: string;
  because: Obstacle['because'];
  /** "Copperline Credit Union has the exclusive right to Bank or credit union through Mar 13 (contract C-2026-0003)" */
  words: string;
}

export interface ExclusivityView extends RightTerms {
  /** "Bank or credit union at Tamarack Ridge High School, at halftime" */
  words: string;
}

export interface CompanyExceptionView {
  id: string;
  reason: string;
  approvedByName: string;
  approvedOn: string;
  /** whose right it goes past: a sponsor, the holder of a reserved category, or the block list */
  against: string;
}
