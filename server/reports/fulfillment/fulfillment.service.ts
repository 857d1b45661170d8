import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { refuse } from '../../domain/refusals.ts';
import { sumOfStandings } from '../../domain/sponsorship/standing.ts';
import { isId } from '../../platform/database/ids.ts';
import { CoveredGames } from '../../sponsorship/covered-games.service.ts';
import { TermLedger } from '../../sponsorship/term-ledger.service.ts';
import type { FulfillmentView } from './fulfillment.dto.ts';
import { benefitOf } from './fulfillment-benefits.ts';
import { linesOf } from './fulfillment-lines.ts';
import type { LineToShow } from './fulfillment-lines.ts';
import { FulfillmentNights } from './fulfillment-nights.service.ts';
import { FulfillmentRows } from './fulfillment-rows.service.ts';
import type { ContractOfProof } from './fulfillment-rows.service.ts';

export interface ProofAsked {
  /** without: no nights and no windows, for boards */
  nights?: boolean;
}

/** What was promised, what was given, and what comes next: from the ledgers, the log and the calendar alone. */
@Injectable()
export class FulfillmentService {
  constructor(
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(FulfillmentRows) private readonly rows: FulfillmentRows,
    @Inject(FulfillmentNights) private readonly nights: FulfillmentNights,
    @Inject(TermLedger) private readonly terms: TermLedger,
    @Inject(CoveredGames) private readonly covered: CoveredGames,
  ) {}

  /** @throws Refused `not-found` */
  async ofContract(contractId: string): Promise<FulfillmentView> {
    const [view] = isId(contractId) ? await this.ofContracts([contractId]) : [];
    return view ?? refuse('not-found');
  }

  /** In the order asked for; what is not there is left out. A draft has promised nothing yet. As many statements for a hundred contracts as for one. */
  async ofContracts(ids: readonly string[], { nights = true }: ProofAsked = {}): Promise<FulfillmentView[]> {
    const found = new Map((await this.rows.contracts(ids)).map((row) => [row.id, row]));
    const contracts = [...new Set(ids)].flatMap((id) => found.get(id) ?? []);
    if (contracts.length === 0) return [];
    const lines = await this.lines(contracts);
    const benefits = await this.benefits(contracts, lines.books);
    const shown = nights ? await this.nights.of(contracts.map(({ id }) => id), lines.ofNights) : null;
    const asOf = await this.departments.today();
    return contracts.map(({ termId: _, ...contract }) => {
      const own = lines.views.filter((line) => line.contractId === contract.id).map((line) => line.view);
      const { id: contractId, ...facts } = contract;
      return {
        contractId, ...facts, asOf,
        sum: sumOfStandings(own.map((line) => line.standing)),
        planned: own.reduce((sum, line) => sum + line.planned, 0),
        shortfall: own.reduce((sum, line) => sum + line.shortfall, 0),
        chanceAllGiven: chanceOfAll(own.map((line) => line.forecast?.chanceAllGiven ?? null)),
        lines: own,
        benefits: benefits.get(contractId) ?? [],
        nights: shown?.get(contractId)?.nights ?? [],
        windows: shown?.get(contractId)?.windows ?? [],
      };
    });
  }

  private async lines(contracts: readonly ContractOfProof[]) {
    const commitments = await this.rows.commitments(contracts.map(({ id }) => id));
    const ids = commitments.map(({ id }) => id);
    const books = new Map((await this.terms.read(contracts.map(({ termId }) => termId))).map((one) => [one.termId, one]));
    const withFloors = commitments.filter(({ leastPerGame }) => leastPerGame !== null).map(({ id }) => id);
    const games = await this.covered.ofSeasons(contracts.map(({ seasonId }) => seasonId));
    const readInGames = await this.rows.readInGames(withFloors);
    const played = withFloors.length === 0 ? [] : games.filter((game) => game.status === 'played').map((game) => game.id);
    const isOver = await this.rows.signedOff(played);
    const facts = { contracts, commitments, books, games, readInGames, isOver, logged: await this.covered.loggedNotSignedOff(ids), planned: await this.rows.planned(ids) };
    const told = linesOf(facts);
    return { books, ...told, views: await this.withNames(told.views) };
  }

  /** Only games whose floor was broken are called by name here. */
  private async withNames(views: readonly LineToShow[]): Promise<LineToShow[]> {
    const games = await this.rows.games(views.flatMap(({ view }) => view.brokenFloors.map((floor) => floor.gameId)));
    return views.map((one) => ({
      ...one,
      view: { ...one.view, brokenFloors: one.view.brokenFloors.map((floor) => ({ ...floor, label: games.get(floor.gameId)?.label ?? '' })) },
    }));
  }

  private async benefits(contracts: readonly ContractOfProof[], books: Awaited<ReturnType<FulfillmentService['lines']>>['books']) {
    const ids = contracts.map(({ id }) => id);
    const rows = await this.rows.benefits(ids);
    const deliveries = rows.length === 0 ? [] : await this.rows.deliveries(ids);
    return new Map(
      contracts.map(({ id, termId, startsOn, endsOn }) => [
        id, rows.filter((row) => row.contractId === id).map((row) => benefitOf(row, { startsOn, endsOn }, books.get(termId)?.position ?? null, deliveries)),
      ]),
    );
  }
}

/** That every line is given in full, as far as lines go their own way; null where nobody can say it of one. */
function chanceOfAll(chances: readonly (number | null)[]): number | null {
  return chances.reduce<number | null>((all, chance) => (all === null || chance === null ? null : all * chance), chances.length === 0 ? null : 1);
}
