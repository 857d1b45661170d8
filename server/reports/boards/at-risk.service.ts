import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../../domain/day.ts';
import { atStakeCents, cheapestRepair, risksOf } from '../../domain/reports/at-risk.ts';
import type { PromiseAtRisk, Repair } from '../../domain/reports/at-risk.ts';
import type { LineShortfall } from '../../makegoods/shortfalls/shortfall.dto.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { FulfillmentView, LineFulfillment } from '../fulfillment/fulfillment.dto.ts';
import { FulfillmentService } from '../fulfillment/fulfillment.service.ts';
import { BoardSeasons } from './board-season.service.ts';
import type { AtRiskLine, AtRiskView } from './board.dto.ts';

interface ContractRow {
  contractId: string;
  heldOn: Day | null;
  heldBecause: string | null;
}

/** Contracts whose term of the season is signed and neither ended nor closed, with the hold that stands. */
const CONTRACTS = `select term.contract_id as "contractId", hold.held_on as "heldOn", hold.reason as "heldBecause"
  from term left join lateral (
    select contract_hold.held_on, contract_hold.reason from contract_hold
    where contract_hold.department_id = $1 and contract_hold.contract_id = term.contract_id and contract_hold.lifts_hold_id is null
      and not exists (select from contract_hold as lift where lift.department_id = $1 and lift.lifts_hold_id = contract_hold.id) limit 1) as hold on true
  where term.department_id = $1 and term.season_id = $2 and term.state = 'signed' order by term.contract_id`;

/** The commitments that may not be given in full, by what is at stake, each with the cheapest thing to do about it. */
@Injectable()
export class AtRiskService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(BoardSeasons) private readonly seasons: BoardSeasons,
    @Inject(FulfillmentService) private readonly fulfillments: FulfillmentService,
  ) {}

  /** @throws Refused `not-found` */
  async show(asked: string | undefined): Promise<AtRiskView> {
    const season = await this.seasons.chosen(asked);
    const rows = season.seasonId === null ? [] : await this.work.sql<ContractRow>(CONTRACTS, [season.seasonId]);
    const ids = rows.map(({ contractId }) => contractId);
    const { views, shortfalls: short } = await this.fulfillments.withShortfalls(ids, { nights: false });
    const held = new Map(rows.map((row) => [row.contractId, row]));
    const lines = views
      .flatMap((view) => view.lines.flatMap((line) => lineAtRisk(view, line, short.get(view.contractId)?.find((one) => one.commitmentId === line.commitmentId), held.get(view.contractId)!)))
      .toSorted((one, other) => other.atStakeCents - one.atStakeCents || other.shortfall - one.shortfall || other.behind - one.behind || (one.sponsorName < other.sponsorName ? -1 : 1));
    const sum = (of: (line: AtRiskLine) => number) => lines.reduce((total, line) => total + of(line), 0);
    return {
      ...season, lines,
      commitments: views.reduce((total, view) => total + view.lines.length, 0),
      contractsAtRisk: new Set(lines.map(({ contractId }) => contractId)).size,
      atStakeCents: sum((line) => line.atStakeCents), owed: sum((line) => line.owed), shortfall: sum((line) => line.shortfall),
    };
  }
}

function lineAtRisk(view: FulfillmentView, line: LineFulfillment, short: LineShortfall | undefined, { heldOn, heldBecause }: ContractRow): AtRiskLine[] {
  const { standing, forecast } = line;
  const promise: PromiseAtRisk = {
    counting: line.counting, owed: standing.owed, behind: standing.behind, planned: line.planned, loggedNotSignedOff: standing.loggedNotSignedOff,
    shortfall: short?.shortfall ?? line.shortfall, openShortfall: short?.open ?? 0, brokenFloors: line.brokenFloors.length, isHeld: heldOn !== null,
    chanceAllGiven: forecast?.chanceAllGiven ?? null, openCents: line.openCents,
  };
  const risks = risksOf(promise);
  if (risks.length === 0) return [];
  const repair = cheapestRepair(promise, short?.options ?? []);
  return [{
    contractId: view.contractId, contractNumber: view.number, title: view.title, sponsorId: view.sponsorId, sponsorName: view.sponsorName,
    commitmentId: line.commitmentId, readKindName: line.readKindName, counting: line.counting,
    promised: standing.promised, given: standing.given + standing.madeGood, owed: standing.owed, expectedByNow: standing.expectedByNow, behind: standing.behind,
    planned: line.planned, shortfall: promise.shortfall, brokenFloors: promise.brokenFloors, heldOn, heldBecause,
    chanceAllGiven: promise.chanceAllGiven, expectedFinal: forecast?.expectedFinal ?? null, forecastWords: forecast?.words ?? null,
    risks, openCents: promise.openCents, atStakeCents: atStakeCents(promise), repair, to: pageOf(repair, view),
  }];
}

function pageOf({ kind }: Repair, { contractId, seasonId, sponsorId }: FulfillmentView): string {
  if (kind === 'liftHold') return `/contracts/${contractId}/lift-hold`;
  if (kind === 'makegood') return `/contracts/${contractId}/show?tab=credits`;
  if (kind === 'proposed') return '/makegood-proposals';
  if (kind === 'place' || kind === 'replan') return `/plan?season=${seasonId}&sponsor=${sponsorId}`;
  return `/contracts/${contractId}/show`;
}
