import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../domain/refusals.ts';
import { isId } from '../platform/database/ids.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Conditions, contains, pageOf } from '../platform/http/lists.ts';
import type { Listed } from '../platform/http/lists.ts';
import type { ChangeSellerDto, SellerDto, SellerListQuery, SellerView } from './seller.dto.ts';
import { Seller } from './seller.entity.ts';

const VIEW = `id, name, number_prefix as "numberPrefix", address, remit_to as "remitTo", tax_identity as "taxIdentity", contact_name as "contactName",
  contact_email as "contactEmail", contact_phone as "contactPhone", tax_basis_points as "taxBasisPoints", terms_days as "termsDays",
  keeps_books_here as "keepsBooksHere", version`;
const FROM = `seller`;
const SORTS = { name: 'name collate "und-x-icu"', numberPrefix: 'number_prefix' };

@Injectable()
export class SellerService {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async list(query: SellerListQuery): Promise<Listed<SellerView>> {
    const on = new Conditions('seller.department_id')
      .add('seller.id = any(?::uuid[])', query.id)
      .add('name ilike ?', contains(query.q));
    const [count] = await this.work.sql<{ total: number }>(`select count(*) as total from ${FROM} where ${on.where}`, on.parameters);
    const data = await this.work.sql<SellerView>(`select ${VIEW} from ${FROM} where ${on.where} ${pageOf(query, SORTS, 'seller.id')}`, on.parameters);
    return { data, total: count?.total ?? 0 };
  }

  async one(id: string): Promise<SellerView> {
    if (!isId(id)) return refuse('not-found');
    const [row] = await this.work.sql<SellerView>(`select ${VIEW} from ${FROM} where seller.department_id = $1 and seller.id = $2`, [id]);
    return row ?? refuse('not-found');
  }

  async add(form: SellerDto): Promise<SellerView> {
    const [row] = await this.work.insert(Seller, form);
    return this.one(row!.id);
  }

  async change(id: string, version: number, form: ChangeSellerDto): Promise<SellerView> {
    await this.work.update(Seller, id, version, form);
    return this.one(id);
  }
}
