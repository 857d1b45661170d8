import { Inject, Injectable } from '@nestjs/common';
import { mayUse } from '../domain/access/rights.ts';
import type { Right, Role } from '../domain/access/rights.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import type { VisitedRequest } from './visitor.ts';

const BY_SESSION = `select membership.roles from session join membership on membership.department_id = $1 and membership.person_id = session.person_id
    and (membership.ended_on is null or membership.ended_on > current_date)
  where session.token_hash = $2 and session.department_id = $1 and session.revoked_at is null and session.expires_at > now()
    and session.last_seen_at > now() - interval '30 minutes'`;

const BY_LINK = `select link.person_id as "personId", membership.roles from link
    left join membership on membership.department_id = $1 and membership.person_id = link.person_id
      and (membership.ended_on is null or membership.ended_on > current_date)
  where link.department_id = $1 and link.id = $2 and link.revoked_at is null and link.expires_at > now()`;

/** For what stays open after it was let in: whether its session or its link still stands. Looking keeps no session alive. */
@Injectable()
export class Admissions {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async stillStands({ visitor, linkVisitor }: Pick<VisitedRequest, 'visitor' | 'linkVisitor'>, right: Right): Promise<boolean> {
    if (visitor) {
      const [found] = await this.work.sql<{ roles: Role[] }>(BY_SESSION, [visitor.tokenHash]);
      return found !== undefined && mayUse(found.roles, right);
    }
    if (!linkVisitor) return false;
    const [link] = await this.work.sql<{ personId: string | null; roles: Role[] | null }>(BY_LINK, [linkVisitor.linkId]);
    // A person's own link is worth what the person's roles are worth today.
    return link !== undefined && (link.personId === null || mayUse(link.roles ?? [], right));
  }
}
