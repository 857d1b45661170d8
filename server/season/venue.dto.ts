import { PartialType } from '@nestjs/swagger';
import { FlagField, IdField, ListOf, OptionalTextField, TextField } from '../platform/http/fields.ts';
import { ListQuery, QueryFlag } from '../platform/http/lists.ts';
import type { Floor } from './floor.entity.ts';
import type { Venue } from './venue.entity.ts';

export class FloorDto {
  @IdField({ optional: true }) id?: string;
  @TextField(1, 80) name: string;
}

export class VenueDto {
  @TextField(1, 120) name: string;
  @OptionalTextField(120) sayAs?: string | null;
  @FlagField({ optional: true }) isOurs?: boolean;
  @OptionalTextField(300) address?: string | null;
  @OptionalTextField(2000) exitsText?: string | null;
  @OptionalTextField(300) defibrillatorPlace?: string | null;
  @OptionalTextField(4000) evacuationText?: string | null;
  @OptionalTextField(4000) weatherText?: string | null;
  @OptionalTextField(4000) injuryText?: string | null;
  @OptionalTextField(4000) threatText?: string | null;
  @ListOf(() => FloorDto, { most: 50 }, { optional: true }) floors?: FloorDto[];
}

export class ChangeVenueDto extends PartialType(VenueDto) {}

export class VenueListQuery extends ListQuery {
  @QueryFlag() isOurs?: boolean;
}

export interface VenueView {
  id: string;
  name: string;
  sayAs: string | null;
  isOurs: boolean;
  address: string | null;
  exitsText: string | null;
  defibrillatorPlace: string | null;
  evacuationText: string | null;
  weatherText: string | null;
  injuryText: string | null;
  threatText: string | null;
  floors: { id: string; name: string }[];
  version: number;
}

export function venueView(venue: Venue, floors: readonly Floor[]): VenueView {
  const { departmentId: _, ...view } = venue;
  return { ...view, floors: floors.filter((floor) => floor.venueId === venue.id).map(({ id, name }) => ({ id, name })) };
}
