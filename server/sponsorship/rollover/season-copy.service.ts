import { Inject, Injectable } from '@nestjs/common';
import { addCents, centsOf, shareOfCents } from '../../domain/money.ts';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Team } from '../../season/team.entity.ts';
import { PackageLine } from '../packages/package-line.entity.ts';
import { Package } from '../packages/package.entity.ts';
import { RateCardLine } from '../rate-card-line.entity.ts';
import { RateCardLineService } from '../rate-card-line.service.ts';
import type { RolledPrice, RolledTeam } from './roll-over.dto.ts';

interface TeamRow extends RolledTeam {
  id: string;
  schoolId: string;
  headCoachSayAs: string | null;
}

/** Teams of ours, and those of others that play in a game of the season. */
const TEAMS = `select team.id, team.school_id as "schoolId", team.name, team.level, team.head_coach as "headCoach", team.head_coach_say_as as "headCoachSayAs",
    school.name as "schoolName", school.is_ours as "isOurs"
  from team join school on school.department_id = team.department_id and school.id = team.school_id
  where team.department_id = $1 and team.season_id = $2
    and (school.is_ours or exists (select from game_participant where game_participant.department_id = $1 and game_participant.team_id = team.id))
  order by school.is_ours desc, school.name, team.name, team.id`;

/** The teams that the contract before a commitment's own names; those of its own season are named by none before it. */
const NAMED_BEFORE = `select unnest(line.team_ids) from contract join commitment as line on line.department_id = $1 and line.contract_id = contract.follows_contract_id
      where contract.department_id = $1 and contract.id = commitment.contract_id`;

/** Drafts that still name a team of the season before, because the contract they follow does, name the new one. */
const DRAFTS_FOLLOW = `update commitment set version = version + 1,
    team_ids = array(select coalesce(next.id, named.id) from unnest(commitment.team_ids) with ordinality as named(id, place)
      left join team as next on next.department_id = $1 and next.season_id = $2 and next.follows_team_id = named.id
        and next.follows_team_id in (${NAMED_BEFORE}) order by named.place)
  where commitment.department_id = $1 and commitment.team_ids && $3::uuid[]
    and exists (select from term where term.department_id = $1 and term.id = commitment.term_id and term.state = 'draft')
    and commitment.team_ids && array(${NAMED_BEFORE})`;

/** What of a season is made anew in the next: teams, prices, packages. */
@Injectable()
export class SeasonCopy {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(RateCardLineService) private readonly rates: RateCardLineService,
  ) {}

  /** With empty rosters. */
  async teams(fromSeasonId: string, seasonId: string): Promise<RolledTeam[]> {
    const rows = await this.work.sql<TeamRow>(TEAMS, [fromSeasonId]);
    await this.work.insert(Team, rows.map(({ id, schoolId, name, level, headCoach, headCoachSayAs }) => ({ seasonId, schoolId, name, level, headCoach, headCoachSayAs, followsTeamId: id })));
    await this.work.sql(DRAFTS_FOLLOW, [seasonId, rows.map((row) => row.id)]);
    return rows.map(({ name, level, schoolName, isOurs, headCoach }) => ({ name, level, schoolName, isOurs, headCoach }));
  }

  /** To the cent, as a rate card is copied anywhere. */
  async rateCard(fromSeasonId: string, seasonId: string, increaseBasisPoints: number): Promise<RolledPrice[]> {
    const before = await this.work.find(RateCardLine, { seasonId: fromSeasonId });
    const { copied } = await this.rates.copy({ fromSeasonId, toSeasonId: seasonId, increaseBasisPoints });
    return copied.map(({ readKindId, readKindName, benefitName, priceCents }) => ({
      name: readKindName ?? benefitName ?? '',
      beforeCents: before.find((line) => line.readKindId === readKindId && line.benefitName === benefitName)?.priceCents ?? 0,
      priceCents,
    }));
  }

  async packages(fromSeasonId: string, seasonId: string, increaseBasisPoints: number): Promise<RolledPrice[]> {
    const before = await this.work.find(Package, { seasonId: fromSeasonId }, { order: { name: 'ASC', id: 'ASC' } });
    const card = await this.work.find(RateCardLine, { seasonId });
    const rows = before.map(({ id, name, priceCents, isOffered, note }) => ({
      id: newId(), seasonId, name, isOffered, note, followsId: id, beforeCents: priceCents,
      priceCents: addCents(priceCents, shareOfCents(priceCents, increaseBasisPoints)),
    }));
    await this.work.insert(Package, rows.map(({ followsId: _, beforeCents: _before, ...row }) => row));
    for (const row of rows) {
      const lines = await this.work.find(PackageLine, { packageId: row.followsId }, { order: { place: 'ASC' } });
      const rateOf = (line: PackageLine) => card.find((one) => one.readKindId === line.readKindId && one.benefitName === line.benefitName)?.priceCents;
      await this.work.insert(PackageLine, lines.map(({ id: _, departmentId: _department, version: _version, ...line }) => ({
        ...line, packageId: row.id, rateCents: centsOf(rateOf({ ...line } as PackageLine) ?? line.rateCents),
      })));
    }
    return rows.map(({ name, beforeCents, priceCents }) => ({ name, beforeCents, priceCents }));
  }
}
