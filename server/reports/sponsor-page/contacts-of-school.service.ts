import { Inject, Injectable } from '@nestjs/common';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { ContactOfSchool } from './sponsor-page.dto.ts';

/** Sellers of record that the sponsor deals with come first; where it deals with none yet, all can be called. */
const SELLERS = `select seller.name, seller.contact_name as "contactName", seller.contact_phone as phone, seller.contact_email as email,
    exists (select from contract where contract.department_id = seller.department_id and contract.seller_id = seller.id and contract.sponsor_id = $2)
      or exists (select from offer where offer.department_id = seller.department_id and offer.seller_id = seller.id and offer.sponsor_id = $2 and offer.state = 'open') as deals
  from seller where seller.department_id = $1 order by deals desc, seller.name collate "und-x-icu"`;

/** Whom a sponsor may call. */
@Injectable()
export class ContactsOfSchool {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async of(sponsorId: string): Promise<ContactOfSchool[]> {
    const rows = await this.work.sql<ContactOfSchool & { deals: boolean }>(SELLERS, [sponsorId]);
    const known = rows.some((row) => row.deals) ? rows.filter((row) => row.deals) : rows;
    return known.map(({ name, contactName, phone, email }) => ({ name, contactName, phone, email }));
  }
}
