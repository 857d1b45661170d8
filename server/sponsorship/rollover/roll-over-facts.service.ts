import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../../domain/day.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { CarriesOn, EndedCopy } from './roll-over.dto.ts';

const CARRIES_ON = `select
    (select count(*)::int from school where school.department_id = $1) as schools,
    (select count(*)::int from venue where venue.department_id = $1) as venues,
    (select count(*)::int from script where script.department_id = $1) as scripts,
    (select count(*)::int from read_kind where read_kind.department_id = $1) as "readKinds",
    (select count(*)::int from window_places where window_places.department_id = $1) as "windowPlaces",
    count(*)::int as players, count(*) filter (where player.say_as is not null)::int as "playersWithSayAs",
    count(*) filter (where player.announce <> 'name')::int as "playersKeptQuiet"
  from player join school as home on home.department_id = player.department_id and home.id = player.school_id
  where player.department_id = $1 and home.is_ours and player.erased_at is null`;

const ENDED_COPIES = `select copy.id as "copyId", sponsor.name as "sponsorName", copy.title, max(version.ends_on) as "endsOn"
  from copy join sponsor on sponsor.department_id = copy.department_id and sponsor.id = copy.sponsor_id
    join copy_version as version on version.department_id = copy.department_id and version.copy_id = copy.id
  where copy.department_id = $1 and copy.sponsor_id = any($2::uuid[]) and copy.stopped_at is null and version.approved_on is not null
  group by copy.department_id, copy.id, sponsor.name
  having bool_and(version.ends_on is not null and version.ends_on < $3) order by sponsor.name, copy.title`;

/** What the next season takes over as it is, and what there is to look at. */
@Injectable()
export class RollOverFacts {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async carriesOn(): Promise<CarriesOn> {
    const [row] = await this.work.sql<CarriesOn>(CARRIES_ON);
    return row!;
  }

  async endedCopies(sponsorIds: readonly string[], startsOn: Day): Promise<EndedCopy[]> {
    return this.work.sql<EndedCopy>(ENDED_COPIES, [[...new Set(sponsorIds)], startsOn]);
  }
}
