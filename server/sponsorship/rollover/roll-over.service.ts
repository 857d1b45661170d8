import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import type { Day } from '../../domain/day.ts';
import { refuse } from '../../domain/refusals.ts';
import { nextSeasonDays } from '../../domain/sponsorship/rollover/moved-days.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Season } from '../../season/season.entity.ts';
import { RateCardLine } from '../rate-card-line.entity.ts';
import { ContractCarrying } from './contract-carrying.service.ts';
import { RollOverFacts } from './roll-over-facts.service.ts';
import type { RollOverDto, RollOverView } from './roll-over.dto.ts';
import { SeasonCopy } from './season-copy.service.ts';

/** Makes the next season of one: teams, prices and packages anew, contracts carried on or renewed. Of the old season nothing changes. */
@Injectable()
export class RollOver {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(SeasonCopy) private readonly copy: SeasonCopy,
    @Inject(ContractCarrying) private readonly contracts: ContractCarrying,
    @Inject(RollOverFacts) private readonly facts: RollOverFacts,
  ) {}

  /** @throws Refused `season-followed-already`, `season-overlaps-before`, `season-name-taken`, and as dates of money are refused */
  async rollOver(fromSeasonId: string, form: RollOverDto): Promise<RollOverView> {
    const from = await this.work.one(Season, fromSeasonId);
    await this.work.lock(Season, [from.id]);
    if (await this.work.first(Season, { followsSeasonId: from.id })) refuse('season-followed-already');
    const season = await this.make(from, form);
    const increase = form.increaseBasisPoints ?? 0;
    const teams = await this.copy.teams(from.id, season.id);
    const rateCard = await this.copy.rateCard(from.id, season.id, increase);
    const packages = await this.copy.packages(from.id, season.id, increase);
    const next = {
      seasonId: season.id,
      move: { from, to: season },
      nextTeams: await this.nextTeams(),
      rates: await this.work.find(RateCardLine, { seasonId: season.id }),
    };
    const choices = new Map((form.choices ?? []).map(({ contractId, choice }) => [contractId, choice]));
    const signedOn = (form.signedOn as Day | undefined) ?? (await this.departments.today());
    const contracts = await this.contracts.carry(from.id, next, { choices, signedOn });
    const { name, startsOn, endsOn } = season;
    const sponsorIds = contracts.filter((one) => one.choice !== 'leave').map((one) => one.sponsorId);
    return {
      fromSeasonId: from.id, fromSeasonName: from.name, seasonId: season.id, name, startsOn, endsOn, teams, rateCard, packages, contracts,
      carriesOn: await this.facts.carriesOn(),
      endedCopies: await this.facts.endedCopies(sponsorIds, startsOn),
    };
  }

  /** What would be made, by making it in a unit that is rolled back; what has no name yet has none. */
  async preview(fromSeasonId: string, form: RollOverDto): Promise<RollOverView> {
    const tried = await this.work.tryOut(() => this.rollOver(fromSeasonId, form));
    return { ...tried, seasonId: null, contracts: tried.contracts.map((one) => ({ ...one, nextContractId: null, nextNumber: null })) };
  }

  private async make(from: Season, form: RollOverDto): Promise<Season> {
    const proposed = nextSeasonDays(from);
    const startsOn = (form.startsOn as Day | undefined) ?? proposed.startsOn;
    const endsOn = (form.endsOn as Day | undefined) ?? proposed.endsOn;
    if (startsOn <= from.endsOn) refuse('season-overlaps-before', { endsOn: from.endsOn }, { startsOn: `is not after ${from.endsOn}` });
    const [row] = await this.work.insert(Season, { name: form.name, sport: from.sport, startsOn, endsOn, followsSeasonId: from.id });
    return this.work.one(Season, row!.id);
  }

  /** Of every season, so that a contract over several sports finds its teams. */
  private async nextTeams(): Promise<Map<string, string>> {
    const rows = await this.work.sql<{ before: string; next: string }>(
      'select follows_team_id as before, id as next from team where department_id = $1 and follows_team_id is not null order by id',
    );
    return new Map(rows.map((row) => [row.before, row.next]));
  }
}
