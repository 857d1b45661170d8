import { CountField, DayField, IdField, TextField } from '../../platform/http/fields.ts';

export class MakegoodDto {
  @IdField({ optional: true }) id?: string;
  @IdField() commitmentId: string;
  /** the game in which they were missed, needed where the commitment is counted by the game */
  @IdField({ optional: true, nullable: true }) gameId?: string | null;
  @CountField(1, 1000) missed: number;
  @IdField() replacementReadKindId: string;
  @CountField(1, 1000) replacements: number;
  @DayField() agreedOn: string;
  @TextField(1, 120) agreedWith: string;
}

export interface MakegoodView {
  id: string;
  commitmentId: string;
  readKindName: string;
  missedGameId: string | null;
  missedGamePlayedOn: string | null;
  missed: number;
  replacementReadKindId: string;
  replacementReadKindName: string;
  replacements: number;
  agreedOn: string;
  agreedWith: string;
  /** replacements that have a place on a night, given or not */
  placed: number;
  /** replacements given so far */
  given: number;
  /** missed reads that are settled by them */
  settled: number;
}
