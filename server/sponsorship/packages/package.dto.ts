import { PartialType } from '@nestjs/swagger';
import type { Counting } from '../../domain/sponsorship/contract-terms.ts';
import type { OfferedLine } from '../../domain/sponsorship/offers/offered-values.ts';
import { CentsField, ChoiceField, CountField, FlagField, IdField, ListOf, OptionalTextField, TextField } from '../../platform/http/fields.ts';
import { ListQuery, QueryFlag } from '../../platform/http/lists.ts';
import { MOST_CENTS, MOST_RATE_CENTS, MOST_READS } from '../amounts.ts';
import { COUNTINGS } from '../contract-line.dto.ts';

const OPEN = { optional: true, nullable: true };

/** A read kind with how it is counted, or another benefit by its name. */
export class PackageLineDto {
  @IdField(OPEN) id?: string | null;
  @IdField(OPEN) readKindId?: string | null;
  @ChoiceField(COUNTINGS, OPEN) counting?: Counting | null;
  @OptionalTextField(120) benefitName?: string | null;
  @CountField(0, MOST_READS, { optional: true }) quantity?: number;
  /** left out: what the season's rate card says now */
  @CentsField({ most: MOST_RATE_CENTS }, OPEN) rateCents?: number | null;
  @CountField(0, 99, OPEN) leastPerGame?: number | null;
  @CountField(1, 99, OPEN) mostPerGame?: number | null;
}

export class PackageDto {
  @IdField() seasonId: string;
  @TextField(1, 120) name: string;
  @CentsField({ most: MOST_CENTS }) priceCents: number;
  @FlagField({ optional: true }) isOffered?: boolean;
  @OptionalTextField(2000) note?: string | null;
  @ListOf(() => PackageLineDto, { least: 1, most: 40 }) lines: PackageLineDto[];
}

export class ChangePackageDto extends PartialType(PackageDto) {}

export class PackageListQuery extends ListQuery {
  @IdField({ optional: true }) seasonId?: string;
  @QueryFlag() isOffered?: boolean;
}

export interface PackageLineView {
  id: string;
  place: number;
  readKindId: string | null;
  readKindName: string | null;
  benefitName: string | null;
  counting: Counting | null;
  quantity: number;
  rateCents: number;
  leastPerGame: number | null;
  mostPerGame: number | null;
  /** how many times the rate card's price it would cost alone: reads over all games, or pieces */
  countAtRate: number;
  worthCents: number;
}

export interface PackageView {
  id: string;
  seasonId: string;
  seasonName: string;
  name: string;
  priceCents: number;
  isOffered: boolean;
  note: string | null;
  version: number;
  lines: PackageLineView[];
  /** what the lines would cost one by one */
  worthCents: number;
  /** regular and conference games of the season that are announced, by which lines per game are counted */
  gamesCounted: number;
  /** what each line is worth as it will be credited, once signed at this price */
  values: OfferedLine[];
  /** why the price cannot be shared over the lines yet */
  valuesTrouble: { code: string; sentence: string } | null;
}
