import { PartialType } from '@nestjs/swagger';
import { ColourField, FlagField, OptionalTextField, TextField } from '../platform/http/fields.ts';
import { ListQuery, QueryFlag } from '../platform/http/lists.ts';
import type { School } from './school.entity.ts';

export class SchoolDto {
  @TextField(1, 120) name: string;
  @TextField(1, 40) shortName: string;
  @TextField(1, 60) nickname: string;
  @OptionalTextField(120) sayAs?: string | null;
  @FlagField({ optional: true }) isOurs?: boolean;
  @ColourField() firstColour: string;
  @ColourField() secondColour: string;
  @OptionalTextField(40) accountCode?: string | null;
  @OptionalTextField(60) outsideId?: string | null;
}

export class ChangeSchoolDto extends PartialType(SchoolDto) {}

export class SchoolListQuery extends ListQuery {
  @QueryFlag() isOurs?: boolean;
}

export interface SchoolView {
  id: string;
  name: string;
  shortName: string;
  nickname: string;
  sayAs: string | null;
  isOurs: boolean;
  firstColour: string;
  secondColour: string;
  accountCode: string | null;
  outsideId: string | null;
  version: number;
}

export function schoolView(school: School): SchoolView {
  const { departmentId: _, ...view } = school;
  return view;
}
