import { CountField, IdField, PatternField } from '../platform/http/fields.ts';

export class PlacementDto {
  @IdField({ optional: true }) id?: string;
  @IdField() commitmentId: string;
  @IdField() gameId: string;
  @PatternField(/^[a-zA-Z]{1,30}[0-9]{0,2}$/, 'is a window such as pregame or timeOut2') windowKey: string;
  /** the first free place where none is named */
  @CountField(1, 20, { optional: true }) place?: number;
  /** the makegood that this read is a replacement of; its commitment is the one whose reads were missed */
  @IdField({ optional: true, nullable: true }) makegoodId?: string | null;
}

export class SpreadDto {
  @IdField() seasonId: string;
}

export interface PlacementView {
  id: string;
  commitmentId: string;
  contractId: string;
  sponsorId: string;
  sponsorName: string;
  sponsorSayAs: string | null;
  readKindId: string;
  readKindName: string;
  placeGroup: string | null;
  gameId: string;
  gameLabel: string;
  nightId: string;
  windowKey: string;
  place: number;
  copyVersionId: string | null;
  makegoodId: string | null;
  isPinned: boolean;
  /** the key under which the table logs it */
  cueKey: string;
  version: number;
}

export interface SpreadView {
  placed: number;
  left: { commitmentId: string; sponsorName: string; readKindName: string; notPlaced: number }[];
}
