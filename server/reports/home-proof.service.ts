import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../access/department.service.ts';
import { mayUse } from '../domain/access/rights.ts';
import type { Role } from '../domain/access/rights.ts';
import { addDays } from '../domain/day.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import type { HomeProof } from './home.dto.ts';

/** From so many days before a term ends its statement may be issued; so long after, a missing one is still called for. Common practice, no source. */
const DAYS_BEFORE_END = 7;
const DAYS_AFTER_END = 90;

const WAITING = `select
    (select count(*) from makegood_proposal where department_id = $1 and state = 'open' and shown_on is not null) as "answersWaiting",
    (select count(*) from makegood_proposal where department_id = $1 and state = 'open' and shown_on is not null and answer_by < $2::date) as "answersLate",
    (select count(*) from term where term.department_id = $1 and term.state <> 'draft' and term.ends_on between $3::date and $4::date
      and not exists (select from performance_statement as statement where statement.department_id = $1 and statement.term_id = term.id)) as "statementsToIssue"`;

/** What of the proof waits: for a sponsor's answer, or for a statement. */
@Injectable()
export class HomeProofService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  /** Null for those who do not see contracts. */
  async show(roles: readonly Role[]): Promise<HomeProof | null> {
    if (!mayUse(roles, 'see contracts')) return null;
    const today = await this.departments.today();
    const [row] = await this.work.sql<HomeProof>(WAITING, [today, addDays(today, -DAYS_AFTER_END), addDays(today, DAYS_BEFORE_END)]);
    return row!;
  }
}
