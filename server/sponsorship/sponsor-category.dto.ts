import { PartialType } from '@nestjs/swagger';
import { FlagField, TextField } from '../platform/http/fields.ts';
import { ListQuery, QueryFlag } from '../platform/http/lists.ts';

export class SponsorCategoryDto {
  @TextField(1, 80) name: string;
  @FlagField({ optional: true }) isBlocked?: boolean;
  @FlagField({ optional: true }) isFood?: boolean;
}

export class ChangeSponsorCategoryDto extends PartialType(SponsorCategoryDto) {}

export class SponsorCategoryListQuery extends ListQuery {
  @QueryFlag() isBlocked?: boolean;
}

export interface SponsorCategoryView {
  id: string;
  name: string;
  isBlocked: boolean;
  /** food or drink: words read inside the school day are cautioned */
  isFood: boolean;
  version: number;
}
