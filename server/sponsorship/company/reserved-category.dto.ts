import { PartialType } from '@nestjs/swagger';
import type { Day } from '../../domain/day.ts';
import type { ReservedRight } from '../../domain/sponsorship/company/rights.ts';
import { DayField, IdField, OptionalTextField, TextField } from '../../platform/http/fields.ts';
import { ListQuery } from '../../platform/http/lists.ts';

const OPEN = { optional: true, nullable: true };

export class ReservedCategoryDto {
  @IdField() categoryId: string;
  @IdField(OPEN) schoolId?: string | null;
  @TextField(1, 160) heldBy: string;
  @DayField() startsOn: Day;
  @DayField(OPEN) endsOn?: Day | null;
  @OptionalTextField(500) note?: string | null;
}

export class ChangeReservedCategoryDto extends PartialType(ReservedCategoryDto) {}

export class ReservedCategoryListQuery extends ListQuery {
  @IdField({ optional: true }) categoryId?: string;
}

export interface ReservedCategoryView extends ReservedRight {
  note: string | null;
  version: number;
}
