import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../domain/refusals.ts';
import type { ImportPlan } from '../domain/season/import-plan.ts';
import { planRosterImport } from '../domain/season/import-rosters.ts';
import type { WantedRosterEntry } from '../domain/season/import-rosters.ts';
import type { TeamThere } from '../domain/season/import-teams.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { readCsv } from './csv.ts';
import { importView, isConfirmed } from './import-view.ts';
import type { ImportView, RosterImportDto } from './import.dto.ts';
import { PlayersThere } from './players-there.service.ts';
import { RosterService } from './roster.service.ts';
import { RosterWriter } from './roster-writer.service.ts';
import { Season } from './season.entity.ts';
import { Team } from './team.entity.ts';

const TEAMS = `select team.id, team.name, team.level, team.school_id as "schoolId", school.name as "schoolName" from team
    join school on school.department_id = team.department_id and school.id = team.school_id
  where team.department_id = $1 and team.season_id = $2 and school.is_ours order by team.id`;

@Injectable()
export class RosterImport {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(RosterService) private readonly rosters: RosterService,
    @Inject(RosterWriter) private readonly writer: RosterWriter,
    @Inject(PlayersThere) private readonly players: PlayersThere,
  ) {}

  /** Shows what a file would do, or does what was shown. */
  async run(form: RosterImportDto): Promise<ImportView> {
    if (!(await this.work.first(Season, { id: form.seasonId }))) refuse('unknown-season');
    const file = readCsv(Buffer.from(form.csv, 'utf8'));
    const teams = await this.teams(form.seasonId);
    if (form.teamId && !teams.some((team) => team.id === form.teamId)) refuse('unknown-team');
    // Two that import at once would both find nobody there; the second waits and then plans anew.
    if (form.confirm !== false) await this.work.lock(Team, teams.map((team) => team.id));
    const plan = planRosterImport(file, {
      teams,
      entries: await this.rosters.lines(teams.map((team) => team.id)),
      players: await this.players.all(),
      numberRule: await this.rosters.numberRule(form.seasonId),
      onlyTeamId: form.teamId ?? null,
      keepMissing: form.keepMissing ?? false,
    });
    const confirmed = isConfirmed([plan], form.confirm);
    if (confirmed) await this.write(plan, teams);
    return importView([plan], confirmed);
  }

  async teams(seasonId: string): Promise<TeamThere[]> {
    return this.work.sql<TeamThere>(TEAMS, [seasonId]);
  }

  private async write(plan: ImportPlan<WantedRosterEntry>, teams: readonly TeamThere[]): Promise<void> {
    const lines = await this.rosters.lines(teams.map((team) => team.id));
    const leaving = plan.steps.filter((step) => step.action === 'drop').map((step) => step.existingId!);
    const written = plan.steps.filter((step) => step.wanted && (step.action === 'create' || step.action === 'change'));
    await this.writer.write(
      leaving,
      written.map((step) => ({
        ...step.wanted!,
        id: step.existingId,
        isStarter: lines.find((line) => line.id === step.existingId)?.isStarter ?? false,
      })),
    );
    const touched = [...written.map((step) => step.wanted!.teamId), ...lines.filter((line) => leaving.includes(line.id)).map((line) => line.teamId)];
    for (const teamId of new Set(touched)) await this.work.update(Team, teamId, null, {});
  }
}
