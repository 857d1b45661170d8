import { Inject, Injectable } from '@nestjs/common';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import type { RecentView } from './home.dto.ts';

interface RecentRow {
  at: string;
  who: string | null;
  what: string;
  resource: RecentView['link']['resource'];
  id: string;
  name: string | null;
  isMoney: boolean;
}

/** What happened lately, one line each, newest first; each branch reads an index and at most `$2` rows. */
const RECENT = `
  select recent.at, coalesce(recent."signedBy", person.name) as who, what, resource, recent.id, recent.name, "isMoney" from (
    (select recorded_at as at, signed_off_by_person_id as person_id, 'signed off the night of' as what, 'nights' as resource, night_id as id,
            (select coalesce(night.title, to_char(night.held_on, 'FMMon FMDD')) from night where night.department_id = $1 and night.id = sign_off.night_id) as name, false as "isMoney",
            signed_off_by_name as "signedBy"
       from sign_off where department_id = $1 order by recorded_at desc limit $2)
    union all
    (select recorded_at, amended_by_person_id, 'amended the night of', 'nights', night_id,
            (select coalesce(night.title, to_char(night.held_on, 'FMMon FMDD')) from night where night.department_id = $1 and night.id = amendment.night_id), false, null
       from amendment where department_id = $1 order by recorded_at desc limit $2)
    union all
    (select recorded_at, issued_by_person_id, 'issued the packet of', 'nights', night_id,
            (select coalesce(night.title, to_char(night.held_on, 'FMMon FMDD')) from night where night.department_id = $1 and night.id = packet_issue.night_id), false, null
       from packet_issue where department_id = $1 order by recorded_at desc limit $2)
    union all
    (select recorded_at, issued_by_person_id, case kind when 'charge' then 'issued charge' else 'issued invoice' end, 'invoices', id, number, true, null from invoice where department_id = $1 and kind <> 'opening' order by recorded_at desc limit $2)
    union all
    (select recorded_at, voided_by_person_id, 'voided invoice', 'invoices', invoice_id,
            (select number from invoice where invoice.department_id = $1 and invoice.id = invoice_void.invoice_id), true, null
       from invoice_void where department_id = $1 order by recorded_at desc limit $2)
    union all
    (select recorded_at, recorded_by_person_id, 'recorded payment', 'payments', id, number, true, null from payment where department_id = $1 and method <> 'opening' order by recorded_at desc limit $2)
    union all
    (select recorded_at, recorded_by_person_id, case kind when 'mistake' then 'took back, as recorded by mistake, payment' else 'recorded that the bank returned payment' end, 'payments', payment_id,
            (select number from payment where payment.department_id = $1 and payment.id = payment_return.payment_id), true, null
       from payment_return where department_id = $1 order by recorded_at desc limit $2)
    union all
    (select recorded_at, recorded_by_person_id,
            case step when 'asked' then 'asked to write off invoice' when 'writtenOff' then 'wrote off invoice' when 'declined' then 'declined to write off invoice' else 'opened again, after it was written off, invoice' end,
            'invoices', invoice_id, (select number from invoice where invoice.department_id = $1 and invoice.id = write_off.invoice_id), true, null
       from write_off where department_id = $1 order by recorded_at desc limit $2)
    union all
    (select recorded_at, recorded_by_person_id,
            case happening ->> 'kind' when 'signed' then 'signed the contract' when 'openingPosition' then 'entered the opening position of' when 'amended' then 'amended the contract'
              when 'gameCancelled' then 'settled a cancelled game with' else 'changed the contract' end,
            'contracts', contract_id, (select title from contract where contract.department_id = $1 and contract.id = ledger_event.contract_id), false, null
       from ledger_event where department_id = $1 and happening ->> 'kind' in ('signed', 'openingPosition', 'amended', 'swapped', 'priceLowered', 'gameCancelled', 'ended', 'closed')
       order by recorded_at desc limit $2)
  ) as recent left join person on person.id = recent.person_id
  order by recent.at desc limit $2`;

@Injectable()
export class RecentService {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async list(count: number, seesMoney: boolean): Promise<RecentView[]> {
    const rows = await this.work.sql<RecentRow>(RECENT, [count * 2]);
    return rows
      .filter((row) => seesMoney || !row.isMoney)
      .slice(0, count)
      .map((row) => ({
        at: row.at,
        who: row.who,
        sentence: `${row.who ?? 'Somebody'} ${row.what} ${row.name ?? ''}`.trim() + '.',
        link: { resource: row.resource, id: row.id },
      }));
  }
}
