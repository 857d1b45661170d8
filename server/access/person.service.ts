import { Inject, Injectable } from '@nestjs/common';
import { whyNotChangeRoles } from '../domain/access/rights.ts';
import { refuse } from '../domain/refusals.ts';
import { newId } from '../platform/database/ids.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Conditions, contains, pageOf } from '../platform/http/lists.ts';
import type { ListQuery, Listed } from '../platform/http/lists.ts';
import { Membership } from './membership.entity.ts';
import type { ChangeRolesDto, NewPersonDto, PersonView } from './person.dto.ts';
import { newPasswordHash } from './sign-in.service.ts';

const VIEW = `membership.id, person.id as "personId", person.name, person.email, person.say_as as "sayAs", membership.roles, membership.version`;
const FROM = `membership join person on person.id = membership.person_id`;
const SORTS = { name: 'person.name collate "und-x-icu"', email: 'person.email' };

@Injectable()
export class PersonService {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async list(query: ListQuery): Promise<Listed<PersonView>> {
    const on = new Conditions('membership.department_id')
      .when(true, 'membership.ended_on is null')
      .add('membership.id = any(?::uuid[])', query.id)
      .add('(person.name ilike ? or person.email ilike ?)', contains(query.q));
    const [count] = await this.work.sql<{ total: number }>(`select count(*) as total from ${FROM} where ${on.where}`, on.parameters);
    const data = await this.work.sql<PersonView>(`select ${VIEW} from ${FROM} where ${on.where} ${pageOf(query, SORTS, 'membership.id')}`, on.parameters);
    return { data, total: count?.total ?? 0 };
  }

  async one(membershipId: string): Promise<PersonView> {
    await this.work.one(Membership, membershipId);
    const [row] = await this.work.sql<PersonView>(`select ${VIEW} from ${FROM} where membership.department_id = $1 and membership.id = $2`, [membershipId]);
    return row ?? refuse('not-found');
  }

  /** Hashes before the unit opens; a person who signs in elsewhere already is added by a director there, not renamed here. */
  async add(form: NewPersonDto): Promise<PersonView> {
    const passwordHash = await newPasswordHash(form.password, 'password');
    return this.work.run(async () => {
      const personId = newId();
      await this.work.sqlEverywhere('insert into person (id, email, name, say_as, password_hash) values ($1, $2, $3, $4, $5)', [
        personId,
        form.email,
        form.name,
        form.sayAs ?? null,
        passwordHash,
      ]);
      const [row] = await this.work.insert(Membership, { personId, roles: form.roles });
      return this.one(row!.id);
    });
  }

  async changeRoles(membershipId: string, version: number, form: ChangeRolesDto): Promise<PersonView> {
    const membership = await this.work.one(Membership, membershipId);
    await this.work.sql(`select 1 from membership where department_id = $1 and 'director' = any(roles) order by id for update`);
    const [others] = await this.work.sql<{ count: number }>(
      `select count(*) as count from membership where department_id = $1 and id <> $2 and 'director' = any(roles) and ended_on is null`,
      [membershipId],
    );
    const why = whyNotChangeRoles(membership.roles, form.roles, others?.count ?? 0);
    if (why) refuse(why);
    await this.work.update(Membership, membershipId, version, { roles: form.roles });
    return this.one(membershipId);
  }
}
