import { Inject, Injectable } from '@nestjs/common';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';

interface ExclusivityRow {
  category_id: string;
  reach: string;
  school_id: string | null;
  starts_on: string;
  ends_on: string;
  game_ids: string[];
  window_kinds: string[];
}

/** What an offer promises of others of its category goes along when a deal is made of it. */
@Injectable()
export class DealCompany {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /** Another offer promises the same. */
  async copy(fromOfferId: string, toOfferId: string): Promise<void> {
    await this.write(await this.rightsOf(fromOfferId), toOfferId);
  }

  /** The rights themselves go over, so that exceptions that name them still do; the offer keeps a copy to show. */
  async handOn(offerId: string, contractId: string): Promise<void> {
    const rows = await this.rightsOf(offerId);
    await this.work.sql('update exclusivity set contract_id = $3, offer_id = null, version = version + 1 where department_id = $1 and offer_id = $2', [offerId, contractId]);
    await this.write(rows, offerId);
  }

  private async rightsOf(offerId: string): Promise<ExclusivityRow[]> {
    return this.work.sql<ExclusivityRow>('select * from exclusivity where department_id = $1 and offer_id = $2 order by id', [offerId]);
  }

  private async write(rows: readonly ExclusivityRow[], offerId: string): Promise<void> {
    for (const row of rows) {
      await this.work.sql(
        `insert into exclusivity (department_id, id, offer_id, category_id, reach, school_id, starts_on, ends_on, game_ids, window_kinds)
         values ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10)`,
        [newId(), offerId, row.category_id, row.reach, row.school_id, row.starts_on, row.ends_on, row.game_ids, row.window_kinds],
      );
    }
  }
}
