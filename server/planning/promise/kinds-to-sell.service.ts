import { Inject, Injectable } from '@nestjs/common';
import type { Cents } from '../../domain/money.ts';
import { windowsOfPromise } from '../../domain/planning/facts/promise-to-plan.ts';
import type { KindToSell } from '../../domain/planning/promise/left-to-sell.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';

export type PricedKind = KindToSell & { readonly priceCents: Cents | null };

/** The read kinds that are planned into windows, with the season's price of one. */
@Injectable()
export class KindsToSell {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async ofSeason(seasonId: string): Promise<PricedKind[]> {
    const rows = await this.work.sql<PricedKind>(
      `select read_kind.id as "readKindId", read_kind.name as "readKindName", read_kind.place_group as "placeGroup", read_kind.sponsors_per_game as "sponsorsPerGame",
         read_kind.default_seconds as seconds, read_kind.windows,
         (select min(rate_card_line.price_cents) from rate_card_line
           where rate_card_line.department_id = $1 and rate_card_line.season_id = $2 and rate_card_line.read_kind_id = read_kind.id) as "priceCents"
       from read_kind where read_kind.department_id = $1 and read_kind.timing = 'scheduled' order by read_kind.name collate "und-x-icu", read_kind.id`,
      [seasonId],
    );
    return rows.map((row) => ({ ...row, windows: windowsOfPromise(row.windows, []) }));
  }
}
