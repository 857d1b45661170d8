import { OmitType, PartialType } from '@nestjs/swagger';
import { LONGEST_ESCORTS, LONGEST_LINE, MOST_HONOURED } from '../domain/packet/honours.ts';
import type { AnnounceChoice } from '../domain/season/player-name.ts';
import { ChoiceField, CountField, IdField, ListOf, OptionalTextField, TextField } from '../platform/http/fields.ts';
import { ImportDto } from '../season/import.dto.ts';
import { HONOURS_KINDS, HONOURS_WINDOWS } from './honours-list.entity.ts';
import type { HonoursListRow } from './honours-list.entity.ts';

export class HonoursListDto {
  @TextField(1, 120) title: string;
  @ChoiceField(HONOURS_KINDS) kind: HonoursListRow['kind'];
  @ChoiceField(HONOURS_WINDOWS) windowKind: HonoursListRow['windowKind'];
  @CountField(5, 300, { optional: true }) secondsEach?: number;
  /** read instead of the opening of the script library */
  @OptionalTextField(2000) openingText?: string | null;
}

export class ChangeHonoursListDto extends PartialType(HonoursListDto) {}

export class HonouredStudentDto {
  /** the player; without one the student is found by name, or made new */
  @IdField({ optional: true, nullable: true }) playerId?: string | null;
  @TextField(1, 120) name: string;
  @OptionalTextField(120) sayAs?: string | null;
  @OptionalTextField(LONGEST_ESCORTS) escorts?: string | null;
  @OptionalTextField(LONGEST_LINE) line?: string | null;
}

export class HonouredStudentsDto {
  @ListOf(() => HonouredStudentDto, { most: MOST_HONOURED }) students: HonouredStudentDto[];
  /** the school of students who are new; needed where the department has several */
  @IdField({ optional: true, nullable: true }) schoolId?: string | null;
}

export class HonoursImportDto extends OmitType(ImportDto, ['seasonId']) {
  /** the school of students who are new; needed where the department has several */
  @IdField({ optional: true, nullable: true }) schoolId?: string | null;
}

export interface HonouredStudentView {
  id: string;
  playerId: string;
  name: string;
  sayAs: string | null;
  announce: AnnounceChoice;
  place: number;
  escorts: string | null;
  line: string | null;
  /** words that are no directory information */
  leaveOut: string[];
}

export interface HonoursListView {
  id: string;
  nightId: string;
  title: string;
  kind: HonoursListRow['kind'];
  windowKind: HonoursListRow['windowKind'];
  secondsEach: number;
  openingText: string | null;
  students: HonouredStudentView[];
  /** students × seconds each */
  secondsInAll: number;
  version: number;
}
