import { Inject, Injectable } from '@nestjs/common';
import { windowHeading } from '../../domain/planning/words/window.ts';
import { kindOfWindow } from '../../domain/season/window-names.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { NightFulfillment, ReadGiven, WindowFulfillment } from './fulfillment.dto.ts';
import { FulfillmentRows } from './fulfillment-rows.service.ts';
import type { NamedGame, PlannedRow } from './fulfillment-rows.service.ts';
import { DISPUTES, GAMES_OF_NIGHTS, LOGGED_READS, MAKEGOODS, NIGHTS } from './night.sql.ts';
import { disputeKey, readsOfLog, unloggedRead } from './night-reads.ts';
import type { LoggedRead, MakegoodOfProof, ReadsContext } from './night-reads.ts';

type NightRow = Omit<NightFulfillment, 'nightId' | 'games' | 'reads' | 'planned'> & { id: string };

/** What the ledgers say of the commitments whose nights are asked for. */
export interface LedgerOfNights extends Pick<ReadsContext, 'stands' | 'everCounted' | 'kindNames'> {
  /** the contract of each commitment */
  contractOf: ReadonlyMap<string, string>;
  /** the games over which the commitments of a contract count */
  coveredBy: ReadonlyMap<string, ReadonlySet<string>>;
  planned: readonly PlannedRow[];
}

export interface NightsOfContract {
  nights: NightFulfillment[];
  windows: WindowFulfillment[];
}

interface OneRead {
  nightId: string;
  placementId: string | null;
  read: ReadGiven;
}

const GIVEN: ReadonlySet<ReadGiven['what']> = new Set(['given', 'extra', 'makegood']);
const NOT_GIVEN: ReadonlySet<ReadGiven['what']> = new Set(['notRead', 'cutShort']);

/** Contracts night by night and window by window, in a handful of statements however many they are. */
@Injectable()
export class FulfillmentNights {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(FulfillmentRows) private readonly rows: FulfillmentRows,
  ) {}

  async of(contractIds: readonly string[], ledger: LedgerOfNights): Promise<Map<string, NightsOfContract>> {
    const commitmentIds = [...ledger.contractOf.keys()];
    if (commitmentIds.length === 0) return new Map(contractIds.map((id) => [id, { nights: [], windows: [] }]));
    const logged = await this.work.sql<LoggedRead>(LOGGED_READS, [commitmentIds]);
    const unlogged = await this.rows.unlogged(commitmentIds);
    const nights = await this.nights([...logged, ...unlogged, ...ledger.planned].map((row) => row.nightId));
    const context = await this.context(commitmentIds, ledger, nights);
    const reads: OneRead[] = [
      ...readsOfLog(logged, context),
      ...unlogged.map((row) => ({ nightId: row.nightId, placementId: row.id, read: unloggedRead(row, context) })),
    ];
    const gamesOf = await this.gamesOf([...nights.keys()]);
    const games = await this.rows.games([...gamesOf.values()].flat());
    const byContract = grouped(reads, ({ read }) => ledger.contractOf.get(read.commitmentId)!);
    const planned = grouped(ledger.planned, (row) => ledger.contractOf.get(row.commitmentId)!);
    return new Map(
      contractIds.map((id) => {
        const own = { reads: byContract.get(id) ?? [], planned: planned.get(id) ?? [] };
        return [id, { nights: nightsOf(own, nights, gamesOf, games, ledger.coveredBy.get(id) ?? new Set()), windows: windowsOf(own, nights) }];
      }),
    );
  }

  private async nights(ids: readonly string[]): Promise<Map<string, NightRow>> {
    const wanted = [...new Set(ids)];
    const rows = wanted.length === 0 ? [] : await this.work.sql<NightRow>(NIGHTS, [wanted]);
    return new Map(rows.map((row) => [row.id, row]));
  }

  private async gamesOf(nightIds: readonly string[]): Promise<Map<string, string[]>> {
    const rows = nightIds.length === 0 ? [] : await this.work.sql<{ nightId: string; gameId: string }>(GAMES_OF_NIGHTS, [nightIds]);
    return new Map([...grouped(rows, (row) => row.nightId)].map(([nightId, some]) => [nightId, some.map((row) => row.gameId)]));
  }

  private async context(commitmentIds: readonly string[], { stands, everCounted, kindNames }: LedgerOfNights, nights: ReadonlyMap<string, NightRow>): Promise<ReadsContext> {
    const makegoods = await this.work.sql<MakegoodOfProof>(MAKEGOODS, [commitmentIds]);
    const disputes = await this.work.sql<{ id: string; entryId: string; occurrence: number }>(DISPUTES, [commitmentIds]);
    return {
      stands, everCounted, kindNames,
      makegoods: new Map(makegoods.map((row) => [row.id, row])),
      disputes: new Map(disputes.map((row) => [disputeKey(row.entryId, row.occurrence), row.id])),
      isSignedOff: (nightId) => nights.get(nightId)?.isSignedOff ?? false,
    };
  }
}

interface Own {
  reads: readonly OneRead[];
  planned: readonly PlannedRow[];
}

function nightsOf({ reads, planned }: Own, nights: ReadonlyMap<string, NightRow>, gamesOf: ReadonlyMap<string, string[]>, games: ReadonlyMap<string, NamedGame>, covered: ReadonlySet<string>): NightFulfillment[] {
  const readsOf = grouped(reads, (one) => one.nightId);
  const plannedOn = grouped(planned, (row) => row.nightId);
  return [...nights.values()].filter(({ id }) => readsOf.has(id) || plannedOn.has(id)).map(({ id, ...night }) => {
    const own = readsOf.get(id) ?? [];
    const named = new Set([...own.map(({ read }) => read.gameId), ...(plannedOn.get(id) ?? []).map((row) => row.gameId)]);
    const shown = (gamesOf.get(id) ?? []).filter((gameId) => named.has(gameId) || covered.has(gameId)).flatMap((gameId) => games.get(gameId) ?? []);
    return {
      nightId: id, ...night,
      games: shown.map(({ id: gameId, label, opponentName, status }) => ({ gameId, label, opponentName, status })),
      reads: own.map(({ read }) => read),
      planned: plannedOn.get(id)?.length ?? 0,
    };
  });
}

/** By the window in which a read was given, or should have been; mentions that name none have a line of their own. */
function windowsOf({ reads, planned }: Own, nights: ReadonlyMap<string, NightRow>): WindowFulfillment[] {
  const windows = new Map<string, WindowFulfillment>();
  const windowOf = (key: string | null): WindowFulfillment => {
    const windowKind = key === null ? 'anyWindow' : kindOfWindow(key);
    const found = windows.get(windowKind) ?? { windowKind, windowName: key === null ? 'When it happened' : windowHeading(windowKind), planned: 0, given: 0, notRead: 0, toCome: 0 };
    windows.set(windowKind, found);
    return found;
  };
  for (const { nightId, placementId, read } of reads) {
    const isGiven = GIVEN.has(read.what);
    const isMissed = NOT_GIVEN.has(read.what) && nights.get(nightId)?.isSignedOff === true;
    if (!isGiven && !isMissed) continue;
    const window = windowOf(read.windowKey);
    if (isGiven) window.given += 1;
    else window.notRead += 1;
    if (placementId !== null) window.planned += 1;
  }
  for (const row of planned) windowOf(row.windowKey).toCome += 1;
  return [...windows.values()].toSorted((one, other) => placeOf(one.windowKind) - placeOf(other.windowKind));
}

const IN_THE_ORDER_OF_A_NIGHT = ['pregame', 'betweenPeriods', 'timeOut', 'deadBall', 'halftime', 'postgame', 'anyWindow'];
const placeOf = (kind: string): number => (IN_THE_ORDER_OF_A_NIGHT.includes(kind) ? IN_THE_ORDER_OF_A_NIGHT.indexOf(kind) : IN_THE_ORDER_OF_A_NIGHT.length);

function grouped<Row>(rows: readonly Row[], keyOf: (row: Row) => string): Map<string, Row[]> {
  const groups = new Map<string, Row[]>();
  for (const row of rows) {
    const group = groups.get(keyOf(row));
    if (group) group.push(row);
    else groups.set(keyOf(row), [row]);
  }
  return groups;
}
