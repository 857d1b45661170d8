import { Inject, Injectable } from '@nestjs/common';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';

/** The deal that takes over: a contract, or another offer. */
export type Taker = { contractId: string } | { offerId: string };

interface ExclusivityRow {
  id: string;
  category_id: string;
  reach: string;
  school_id: string | null;
  starts_on: string;
  ends_on: string;
  game_ids: string[];
  window_kinds: string[];
}

interface ExceptionRow {
  exclusivity_id: string | null;
  reserved_category_id: string | null;
  blocked_category_id: string | null;
  reason: string;
  approved_by_name: string;
  approved_on: string;
  recorded_by_person_id: string | null;
}

/** What an offer says of others of its category goes along when a deal is made of it. */
@Injectable()
export class DealCompany {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /** @returns the new right of each old one */
  async copyExclusivities(offerId: string, to: Taker): Promise<Map<string, string>> {
    const copies = new Map<string, string>();
    const rows = await this.work.sql<ExclusivityRow>('select * from exclusivity where department_id = $1 and offer_id = $2 order by id', [offerId]);
    for (const row of rows) {
      copies.set(row.id, newId());
      await this.work.sql(
        `insert into exclusivity (department_id, id, contract_id, offer_id, category_id, reach, school_id, starts_on, ends_on, game_ids, window_kinds)
         values ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11)`,
        [copies.get(row.id), ...takerOf(to), row.category_id, row.reach, row.school_id, row.starts_on, row.ends_on, row.game_ids, row.window_kinds],
      );
    }
    return copies;
  }

  /** With the name of who approved them; they stand for the deal that was made of the offer, and for the copies of its own rights. */
  async copyExceptions(offerId: string, to: Taker, copies: ReadonlyMap<string, string>): Promise<void> {
    const rows = await this.work.sql<ExceptionRow>('select * from company_exception where department_id = $1 and offer_id = $2 order by recorded_at, id', [offerId]);
    for (const row of rows) {
      await this.work.sql(
        `insert into company_exception (department_id, id, contract_id, offer_id, exclusivity_id, reserved_category_id, blocked_category_id, reason, approved_by_name, approved_on, recorded_by_person_id)
         values ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11)`,
        [newId(), ...takerOf(to), row.exclusivity_id && (copies.get(row.exclusivity_id) ?? row.exclusivity_id), row.reserved_category_id, row.blocked_category_id, row.reason, row.approved_by_name, row.approved_on, row.recorded_by_person_id],
      );
    }
  }
}

function takerOf(to: Taker): [contractId: string | null, offerId: string | null] {
  return 'contractId' in to ? [to.contractId, null] : [null, to.offerId];
}
