import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../../domain/day.ts';
import type { GameStatus, Level } from '../../domain/season/game.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { labelsOf } from '../../planning/facts/game-labels.ts';
import { BENEFITS, COMMITMENTS } from '../../sponsorship/contract-view.sql.ts';
import type { BenefitView, CommitmentRow, TermState } from '../../sponsorship/contract-view.ts';
import { CONTRACTS, DELIVERIES, GAMES, GAMES_SIGNED_OFF, PLANNED, READ_IN_GAMES, UNLOGGED, WINDOW_RECORDS } from './fulfillment.sql.ts';

export interface ContractOfProof {
  id: string;
  number: string | null;
  title: string;
  sponsorId: string;
  sponsorName: string;
  termId: string;
  seasonId: string;
  seasonName: string;
  startsOn: Day;
  endsOn: Day;
  state: TermState;
}

export interface DeliveryRow {
  benefitId: string;
  deliveredOn: Day;
  quantity: number;
  proof: string;
  isTakenBack: boolean;
}

/** A planned read of which the log says nothing. */
export interface PlannedRow {
  id: string;
  commitmentId: string;
  makegoodId: string | null;
  gameId: string;
  nightId: string;
  windowKey: string;
}

export interface NamedGame {
  id: string;
  level: Level;
  playedOn: Day;
  status: GameStatus;
  label: string;
  opponentName: string | null;
}

/** The rows that a proof is made from, each in one statement for all contracts that are asked for. */
@Injectable()
export class FulfillmentRows {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async contracts(ids: readonly string[]): Promise<ContractOfProof[]> {
    return this.asked<ContractOfProof>(CONTRACTS, ids);
  }

  async commitments(contractIds: readonly string[]): Promise<CommitmentRow[]> {
    return this.asked<CommitmentRow>(COMMITMENTS, contractIds);
  }

  async benefits(contractIds: readonly string[]): Promise<BenefitView[]> {
    return this.asked<BenefitView>(BENEFITS, contractIds);
  }

  async deliveries(contractIds: readonly string[]): Promise<DeliveryRow[]> {
    return this.asked<DeliveryRow>(DELIVERIES, contractIds);
  }

  /** What is planned for nights that nobody has signed off. */
  async planned(commitmentIds: readonly string[]): Promise<PlannedRow[]> {
    return this.asked<PlannedRow>(PLANNED, commitmentIds);
  }

  /** What was planned on nights signed off, and of which the log says nothing. */
  async unlogged(commitmentIds: readonly string[]): Promise<PlannedRow[]> {
    return this.asked<PlannedRow>(UNLOGGED, commitmentIds);
  }

  async readInGames(commitmentIds: readonly string[]): Promise<{ commitmentId: string; gameId: string; reads: number }[]> {
    return this.asked(READ_IN_GAMES, commitmentIds);
  }

  /** How the windows of seasons have done so far, all sponsors together. */
  async windowRecords(seasonIds: readonly string[]): Promise<{ seasonId: string; windowKey: string; planned: number; given: number }[]> {
    return this.asked(WINDOW_RECORDS, seasonIds);
  }

  async signedOff(gameIds: readonly string[]): Promise<ReadonlySet<string>> {
    const rows = await this.asked<{ id: string }>(GAMES_SIGNED_OFF, gameIds);
    return new Set(rows.map((row) => row.id));
  }

  /** Games by their id, each by a name that tells it from the others of its day. */
  async games(ids: readonly string[]): Promise<ReadonlyMap<string, NamedGame>> {
    const rows = await this.asked<NamedGame>(GAMES, ids);
    const labels = labelsOf(rows);
    return new Map(rows.map((row) => [row.id, { ...row, label: labels.get(row.id) ?? row.label }]));
  }

  private async asked<Row>(sql: string, ids: readonly string[]): Promise<Row[]> {
    return ids.length === 0 ? [] : this.work.sql<Row>(sql, [[...new Set(ids)]]);
  }
}
