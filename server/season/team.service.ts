import { Inject, Injectable } from '@nestjs/common';
import { mayUse } from '../domain/access/rights.ts';
import type { Role } from '../domain/access/rights.ts';
import { refuse } from '../domain/refusals.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Conditions, contains, pageOf } from '../platform/http/lists.ts';
import type { Listed } from '../platform/http/lists.ts';
import { GameParticipant } from './game-participant.entity.ts';
import { RosterService } from './roster.service.ts';
import { teamLabel } from './team.dto.ts';
import type { ChangeTeamDto, RosterDto, TeamDto, TeamListQuery, TeamView } from './team.dto.ts';
import { Team } from './team.entity.ts';

const VIEW = `team.id, team.season_id as "seasonId", season.name as "seasonName", team.school_id as "schoolId", school.name as "schoolName",
  school.nickname, school.is_ours as "isOurs", team.name, team.level, team.head_coach as "headCoach", team.head_coach_say_as as "headCoachSayAs",
  (select count(*) from roster_entry where roster_entry.department_id = $1 and roster_entry.team_id = team.id)::int as "rosterSize", team.version`;
const FROM = `team join season on season.department_id = team.department_id and season.id = team.season_id
  join school on school.department_id = team.department_id and school.id = team.school_id`;
const SORTS = {
  label: 'school.nickname collate "und-x-icu"',
  name: 'team.name collate "und-x-icu"',
  schoolName: 'school.name collate "und-x-icu"',
  seasonName: 'season.name collate "und-x-icu"',
  level: `array_position(array['varsity','juniorVarsity','sophomore','freshman','middleSchool'], team.level)`,
};
const TIE = `season.starts_on desc, array_position(array['varsity','juniorVarsity','sophomore','freshman','middleSchool'], team.level), team.name, team.id`;

type Row = Omit<TeamView, 'label'>;

@Injectable()
export class TeamService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(RosterService) private readonly rosters: RosterService,
  ) {}

  async list(query: TeamListQuery): Promise<Listed<TeamView>> {
    const on = new Conditions('team.department_id')
      .add('team.id = any(?::uuid[])', query.id)
      .add('team.season_id = ?', query.seasonId)
      .add('team.school_id = ?', query.schoolId)
      .add('team.level = ?', query.level)
      .add('school.is_ours = ?', query.isOurs)
      .add('(team.name ilike ? or school.name ilike ? or school.nickname ilike ?)', contains(query.q));
    const [count] = await this.work.sql<{ total: number }>(`select count(*) as total from ${FROM} where ${on.where}`, on.parameters);
    const data = await this.work.sql<Row>(`select ${VIEW} from ${FROM} where ${on.where} ${pageOf(query, SORTS, TIE)}`, on.parameters);
    return { data: data.map((row) => ({ ...row, label: teamLabel(row) })), total: count?.total ?? 0 };
  }

  /** With the roster for those who may see students; only who may change them sees a name the family keeps silent. */
  async one(id: string, roles: readonly Role[]): Promise<TeamView> {
    const team = await this.work.one(Team, id);
    const [row] = await this.work.sql<Row>(`select ${VIEW} from ${FROM} where team.department_id = $1 and team.id = $2`, [id]);
    if (!row) return refuse('not-found');
    const view = { ...row, label: teamLabel(row) };
    if (!mayUse(roles, 'see students')) return view;
    const { roster, warnings } = await this.rosters.of(team, mayUse(roles, 'change students'));
    return { ...view, roster, warnings };
  }

  async add(form: TeamDto, roles: readonly Role[]): Promise<TeamView> {
    const [row] = await this.work.insert(Team, form);
    return this.one(row!.id, roles);
  }

  async change(id: string, version: number, form: ChangeTeamDto, roles: readonly Role[]): Promise<TeamView> {
    const team = await this.work.one(Team, id);
    const changesSeason = form.seasonId !== undefined && form.seasonId !== team.seasonId;
    const changesSchool = form.schoolId !== undefined && form.schoolId !== team.schoolId;
    if ((changesSeason || changesSchool) && (await this.isUsed(team))) refuse('team-has-games');
    await this.work.update(Team, id, version, form);
    return this.one(id, roles);
  }

  async putRoster(id: string, version: number, form: RosterDto, roles: readonly Role[]): Promise<TeamView> {
    const team = await this.work.one(Team, id);
    await this.work.update(Team, id, version, {});
    await this.rosters.put(team, form.players);
    return this.one(id, roles);
  }

  private async isUsed(team: Team): Promise<boolean> {
    const { roster } = await this.rosters.of(team, true);
    return roster.length > 0 || (await this.work.count(GameParticipant, { teamId: team.id })) > 0;
  }
}
