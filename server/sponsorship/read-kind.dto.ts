import { applyDecorators } from '@nestjs/common';
import { ApiProperty, PartialType } from '@nestjs/swagger';
import { ArrayMaxSize, ArrayMinSize, IsArray, Matches } from 'class-validator';
import { ChoiceField, CountField, IdField, OptionalTextField, TextField } from '../platform/http/fields.ts';
import { ListQuery } from '../platform/http/lists.ts';

const TIMINGS = ['scheduled', 'onOccurrence'];

/** Windows are named by the sport profiles, so they are words and not a fixed list. */
function WindowsField(): PropertyDecorator {
  return applyDecorators(
    ApiProperty({ type: String, isArray: true, minItems: 1, maxItems: 20 }),
    IsArray({ message: 'is a list' }),
    ArrayMinSize(1, { message: 'names at least one window' }),
    ArrayMaxSize(20, { message: 'names at most 20 windows' }),
    Matches(/^[a-zA-Z0-9-]{1,40}$/, { each: true, message: 'holds something that is no window' }),
  );
}

export class ReadKindDto {
  @TextField(1, 80) name: string;
  @ChoiceField(TIMINGS) timing: 'scheduled' | 'onOccurrence';
  @WindowsField() windows: string[];
  @CountField(1, 600, { optional: true }) defaultSeconds?: number;
  @CountField(1, 99, { optional: true }) sponsorsPerGame?: number;
  @OptionalTextField(40) occurrence?: string | null;
  /** what is handed over before the crowd when it is read before the game: "game ball" */
  @OptionalTextField(60) presents?: string | null;
  /** kinds that name the same group share places of their own within a window */
  @OptionalTextField(60) placeGroup?: string | null;
}

export class ChangeReadKindDto extends PartialType(ReadKindDto) {}

export class ReadKindListQuery extends ListQuery {
  @ChoiceField(TIMINGS, { optional: true }) timing?: string;
  /** with it, each kind carries its rate-card price of that season */
  @IdField({ optional: true }) seasonId?: string;
}

export interface ReadKindView {
  id: string;
  name: string;
  timing: 'scheduled' | 'onOccurrence';
  windows: string[];
  defaultSeconds: number;
  sponsorsPerGame: number;
  occurrence: string | null;
  presents: string | null;
  placeGroup: string | null;
  /** price of one read by season */
  rates: { seasonId: string; priceCents: number }[];
  /** price of one read in the season asked for; null without one */
  rateCents: number | null;
  version: number;
}
