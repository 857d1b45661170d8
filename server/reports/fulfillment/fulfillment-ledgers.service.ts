import { Inject, Injectable } from '@nestjs/common';
import { CoveredGames } from '../../sponsorship/covered-games.service.ts';
import { TermLedger } from '../../sponsorship/term-ledger.service.ts';
import type { TermBooks } from '../../sponsorship/term-ledger.service.ts';
import { linesOf } from './fulfillment-lines.ts';
import type { LineToShow } from './fulfillment-lines.ts';
import type { LedgerOfNights } from './fulfillment-nights.service.ts';
import { FulfillmentRows } from './fulfillment-rows.service.ts';
import type { ContractOfProof, PlannedRow } from './fulfillment-rows.service.ts';

/** What the ledgers and the calendar say of contracts, line by line. */
export interface ToldByLedgers {
  /** by the term's id */
  books: ReadonlyMap<string, TermBooks>;
  lines: LineToShow[];
  planned: readonly PlannedRow[];
  ofNights: LedgerOfNights;
}

/** Reads the ledgers, the calendar and the plan of contracts, each in one statement for all of them. */
@Injectable()
export class FulfillmentLedgers {
  constructor(
    @Inject(FulfillmentRows) private readonly rows: FulfillmentRows,
    @Inject(TermLedger) private readonly terms: TermLedger,
    @Inject(CoveredGames) private readonly covered: CoveredGames,
  ) {}

  async of(contracts: readonly ContractOfProof[]): Promise<ToldByLedgers> {
    const commitments = await this.rows.commitments(contracts.map(({ id }) => id));
    const ids = commitments.map(({ id }) => id);
    const books = new Map((await this.terms.read(contracts.map(({ termId }) => termId))).map((one) => [one.termId, one]));
    const games = await this.covered.ofReach(contracts.map(({ id, seasonId }) => ({ seasonId, teamIds: commitments.filter((one) => one.contractId === id).flatMap((one) => one.teamIds) })));
    const planned = await this.rows.planned(ids);
    const { views, ofNights } = linesOf({
      contracts, commitments, books, games, planned,
      readInGames: await this.rows.readInGames(commitments.filter(({ leastPerGame }) => leastPerGame !== null).map(({ id }) => id)),
      isOver: await this.rows.signedOff(games.map((game) => game.id)),
      logged: await this.covered.loggedNotSignedOff(ids),
    });
    return { books, planned, ofNights, lines: await this.withNames(views) };
  }

  /** Only games whose floor was broken are called by name here. */
  private async withNames(lines: readonly LineToShow[]): Promise<LineToShow[]> {
    const games = await this.rows.games(lines.flatMap(({ view }) => view.brokenFloors.map((floor) => floor.gameId)));
    return lines.map((one) => ({
      ...one,
      view: { ...one.view, brokenFloors: one.view.brokenFloors.map((floor) => ({ ...floor, label: games.get(floor.gameId)?.label ?? '' })) },
    }));
  }
}
