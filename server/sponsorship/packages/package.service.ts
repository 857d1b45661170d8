import { Inject, Injectable } from '@nestjs/common';
import { centsOf } from '../../domain/money.ts';
import { refuse, sentenceOfRefusal } from '../../domain/refusals.ts';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { PackageLine } from './package-line.entity.ts';
import { PackageViews } from './package-views.service.ts';
import type { ChangePackageDto, PackageDto, PackageLineDto, PackageView } from './package.dto.ts';
import { Package } from './package.entity.ts';
import { RATES } from './package.sql.ts';

interface Rate {
  readKindId: string | null;
  benefitName: string | null;
  priceCents: number;
}

/** Reads of one game or night that a package may promise. */
const MOST_PER_GAME = 99;

/** Writes packages. An offer made from one keeps its own lines, so a package may change at any time. */
@Injectable()
export class PackageService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(PackageViews) private readonly views: PackageViews,
  ) {}

  async add({ lines, ...form }: PackageDto): Promise<PackageView> {
    const [row] = await this.work.insert(Package, { ...form, priceCents: centsOf(form.priceCents) });
    await this.write(row!.id, form.seasonId, lines);
    return this.views.one(row!.id);
  }

  /** @throws Refused `stale-version` */
  async change(id: string, version: number, { lines, ...form }: ChangePackageDto): Promise<PackageView> {
    await this.work.update(Package, id, version, form as Partial<Package>);
    if (lines) {
      await this.work.remove(PackageLine, { packageId: id });
      await this.write(id, (await this.work.one(Package, id)).seasonId, lines);
    }
    return this.views.one(id);
  }

  private async write(packageId: string, seasonId: string, lines: readonly PackageLineDto[]): Promise<void> {
    lines.forEach(checkLine);
    const rates = await this.work.sql<Rate>(RATES, [seasonId]);
    const rateOf = (line: PackageLineDto) => rates.find((rate) => (line.readKindId ? rate.readKindId === line.readKindId : rate.benefitName === line.benefitName))?.priceCents ?? 0;
    const rows = lines.map((line, place) => ({
      id: line.id ?? newId(), packageId, place: place + 1,
      readKindId: line.readKindId ?? null, benefitName: line.benefitName ?? null, counting: line.readKindId ? line.counting! : null,
      quantity: line.quantity ?? (line.counting === 'onOccurrence' ? 0 : 1), rateCents: centsOf(line.rateCents ?? rateOf(line)),
      leastPerGame: line.leastPerGame ?? null, mostPerGame: line.mostPerGame ?? null,
    }));
    await this.work.insert(PackageLine, rows);
  }
}

/** @throws Refused `package-line-of-nothing`, `least-above-most`, `malformed`, at the field of the form */
function checkLine({ readKindId, benefitName, counting, quantity, leastPerGame, mostPerGame }: PackageLineDto, place: number): void {
  const at = (field: string, error: string) => ({ lines: { [place]: { [field]: error } } });
  if (Boolean(readKindId) === Boolean(benefitName)) refuse('package-line-of-nothing', {}, at('readKindId', sentenceOfRefusal('package-line-of-nothing')));
  if (readKindId && !counting) refuse('malformed', {}, at('counting', 'is missing'));
  if (quantity === 0 && counting !== 'onOccurrence') refuse('malformed', {}, at('quantity', 'is 1 or more'));
  if ((counting === 'perGame' || counting === 'perNight') && (quantity ?? 1) > MOST_PER_GAME) refuse('malformed', {}, at('quantity', `is from 1 to ${MOST_PER_GAME} in one game`));
  if (leastPerGame != null && mostPerGame != null && leastPerGame > mostPerGame) refuse('least-above-most', {}, at('leastPerGame', sentenceOfRefusal('least-above-most')));
}
