import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { ROLE_RIGHTS } from '../../domain/access/rights.ts';
import { checkTaker } from '../../domain/billing/receipt.ts';
import type { Taking } from '../../domain/billing/receipt.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';

const TAKINGS = `select taken_by_person_id as "takenByPersonId" from receipt where department_id = $1 and payment_id = any($2::uuid[])`;

const OTHERS = `select person.name from membership join person on person.id = membership.person_id
  where membership.department_id = $1 and membership.ended_on is null and membership.roles && $2::text[] and not person.id = any($3::uuid[])
  order by person.name collate "und-x-icu" limit 5`;

/** Keeps the one who takes money in apart from the one who posts it. */
@Injectable()
export class Takers {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  /** @throws Refused `taker-may-not-post` */
  async check(paymentIds: readonly string[]): Promise<void> {
    const { personId } = this.work.scope;
    const takings = await this.work.sql<Taking>(TAKINGS, [paymentIds]);
    if (!takings.some((taking) => taking.takenByPersonId === personId)) return;
    const { settings } = await this.departments.here();
    const takers = takings.flatMap(({ takenByPersonId }) => (takenByPersonId ? [takenByPersonId] : []));
    const others = await this.work.sql<{ name: string }>(OTHERS, [[...ROLE_RIGHTS['record payments']], takers]);
    checkTaker(takings, personId, settings.takerMayPost, others.map((other) => other.name));
  }
}
