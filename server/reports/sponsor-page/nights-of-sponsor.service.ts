import { Inject, Injectable } from '@nestjs/common';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { PLANNED } from '../fulfillment/fulfillment.sql.ts';
import { FulfillmentService } from '../fulfillment/fulfillment.service.ts';
import { nightsOfSponsor } from './nights-of-sponsor.ts';
import type { PlannedRead } from './nights-of-sponsor.ts';
import type { NightsOfSponsorView } from './nights-of-sponsor.dto.ts';

const SIGNED = `select contract.id from contract where contract.department_id = $1 and contract.sponsor_id = $2
  and exists (select from term where term.department_id = contract.department_id and term.contract_id = contract.id and term.state <> 'draft')`;

const TITLES = 'select title from copy where department_id = $1 and sponsor_id = $2';

/** `$2` commitments. The same places as everywhere, by their kind; a proposed plan is not told before it is accepted. */
const PLANNED_KINDS = `with placed as (${PLANNED})
  select placed."nightId", read_kind.name as "readKindName", count(*) as count from placed
    join commitment on commitment.department_id = $1 and commitment.id = placed."commitmentId"
    left join makegood on makegood.department_id = $1 and makegood.id = placed."makegoodId"
    join read_kind on read_kind.department_id = $1 and read_kind.id = coalesce(makegood.replacement_read_kind_id, commitment.read_kind_id)
  group by placed."nightId", read_kind.name order by placed."nightId", read_kind.name`;

/** A sponsor's nights: what was read on each, and what is planned for those to come. */
@Injectable()
export class NightsOfSponsor {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(FulfillmentService) private readonly fulfillment: FulfillmentService,
  ) {}

  async of(sponsorId: string): Promise<NightsOfSponsorView> {
    const contracts = await this.work.sql<{ id: string }>(SIGNED, [sponsorId]);
    const views = await this.fulfillment.ofContracts(contracts.map((contract) => contract.id));
    const commitmentIds = views.flatMap((view) => view.lines.map((line) => line.commitmentId));
    const titles = await this.work.sql<{ title: string }>(TITLES, [sponsorId]);
    const planned = await this.work.sql<PlannedRead>(PLANNED_KINDS, [commitmentIds]);
    return { nights: nightsOfSponsor(views, planned, new Set(titles.map((copy) => copy.title))) };
  }
}
