import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../domain/day.ts';
import type { Cents } from '../domain/money.ts';
import type { ContractThere, ContractsThere, ReadKindThere, SponsorThere, WantedCommitment } from '../domain/sponsorship/import-contracts.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';

const SPONSORS = `select sponsor.id, sponsor.name, sponsor.outside_id as "outsideId", category.name as "categoryName", sponsor.contact_name as "contactName",
    sponsor.email, sponsor.phone
  from sponsor join sponsor_category as category on category.department_id = sponsor.department_id and category.id = sponsor.category_id
  where sponsor.department_id = $1 order by sponsor.id`;
const CATEGORIES = `select name, is_blocked as "isBlocked" from sponsor_category where department_id = $1 order by id`;
const SELLERS = `select id, name from seller where department_id = $1 order by id`;
const READ_KINDS = `select read_kind.id, read_kind.name, read_kind.timing, line.price_cents as "rateCents"
  from read_kind left join rate_card_line as line on line.department_id = read_kind.department_id and line.read_kind_id = read_kind.id and line.season_id = $2
  where read_kind.department_id = $1 order by read_kind.id`;
const CONTRACTS = `select contract.id, contract.outside_id as "outsideId", contract.sponsor_id as "sponsorId", contract.seller_id as "sellerId",
    payer.name as "payerName", term.id as "termId", term.state, term.starts_on as "startsOn", term.ends_on as "endsOn", term.price_cents as "priceCents"
  from term join contract on contract.department_id = term.department_id and contract.id = term.contract_id
    join payer on payer.department_id = contract.department_id and payer.id = contract.payer_id
  where term.department_id = $1 and term.season_id = $2 order by contract.id`;
const COMMITMENTS = `select term_id as "termId", read_kind_id as "readKindId", counting, reads, reads_at_least as "readsAtLeast", reads_at_most as "readsAtMost",
    rate_cents as "rateCents", starts_on as "startsOn", ends_on as "endsOn"
  from commitment where department_id = $1 and term_id = any($2::uuid[]) order by term_id, place`;

type ContractRow = Omit<ContractThere, 'commitments' | 'priceCents'> & { termId: string; priceCents: Cents };

/** What a file of contracts is compared with. */
@Injectable()
export class ContractsThereReader {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async of(season: { id: string; startsOn: Day; endsOn: Day }): Promise<ContractsThere> {
    const rows = await this.work.sql<ContractRow>(CONTRACTS, [season.id]);
    const lines = await this.work.sql<WantedCommitment & { termId: string }>(COMMITMENTS, [rows.map((row) => row.termId)]);
    return {
      season: { startsOn: season.startsOn, endsOn: season.endsOn },
      sponsors: await this.work.sql<SponsorThere>(SPONSORS),
      categories: await this.work.sql<{ name: string; isBlocked: boolean }>(CATEGORIES),
      sellers: await this.work.sql<{ id: string; name: string }>(SELLERS),
      readKinds: await this.work.sql<ReadKindThere>(READ_KINDS, [season.id]),
      contracts: rows.map(({ termId, ...row }) => ({ ...row, commitments: lines.filter((line) => line.termId === termId) })),
    };
  }
}
