import type { Day } from '../../domain/day.ts';
import { brokenFloorsOf } from '../../domain/reports/broken-floors.ts';
import { paceByDay } from '../../domain/reports/pace.ts';
import { readsThatStand } from '../../domain/reports/reads-that-stand.ts';
import type { ReadThatStands } from '../../domain/reports/reads-that-stand.ts';
import { openCentsOf } from '../../domain/sponsorship/line-values.ts';
import type { LinePosition } from '../../domain/sponsorship/position.ts';
import { standingOf, sumOfStandings } from '../../domain/sponsorship/standing.ts';
import type { CommitmentRow } from '../../sponsorship/contract-view.ts';
import { NOTHING_LOGGED, coveredBy } from '../../sponsorship/covered-games.service.ts';
import type { GameOfSeason, LoggedReads } from '../../sponsorship/covered-games.service.ts';
import type { TermBooks } from '../../sponsorship/term-ledger.service.ts';
import type { LineFulfillment } from './fulfillment.dto.ts';
import type { LedgerOfNights } from './fulfillment-nights.service.ts';
import type { ContractOfProof, PlannedRow } from './fulfillment-rows.service.ts';

export interface LineFacts {
  contracts: readonly ContractOfProof[];
  commitments: readonly CommitmentRow[];
  /** by the term's id */
  books: ReadonlyMap<string, TermBooks>;
  /** of all seasons of the contracts */
  games: readonly GameOfSeason[];
  /** logged and not signed off, by commitment */
  logged: ReadonlyMap<string, LoggedReads>;
  planned: readonly PlannedRow[];
  /** of commitments with a floor */
  readInGames: readonly { commitmentId: string; gameId: string; reads: number }[];
  /** games whose nights are signed off */
  isOver: ReadonlySet<string>;
}

export interface LineToShow {
  contractId: string;
  view: LineFulfillment;
  /** as the ledger has it; null before signing */
  line: LinePosition | null;
  logged: LoggedReads;
  /** the commitment's games whose nights are signed off */
  gamesCounted: number;
  /** and those that are not */
  gamesLeft: number;
}

/** Each commitment as its ledger, the calendar and the log have it, and what its nights will be told with. */
export function linesOf(facts: LineFacts): { views: LineToShow[]; ofNights: LedgerOfNights } {
  const contracts = new Map(facts.contracts.map((contract) => [contract.id, contract]));
  const reads = new Map<string, ReadThatStands[]>();
  const everCounted = new Set<string>();
  for (const { position, happened } of facts.books.values()) {
    if (!position) continue;
    for (const read of readsThatStand(position, happened)) append(reads, read.lineId, read);
    for (const { happening } of happened) if (happening.kind === 'readCounted' || happening.kind === 'makegoodGiven') everCounted.add(happening.readId);
  }
  const coveredGames = new Map<string, Set<string>>();
  const views = facts.commitments.map((commitment) => {
    const contract = contracts.get(commitment.contractId)!;
    const games = coveredBy({ ...commitment, seasonId: contract.seasonId, termStartsOn: contract.startsOn, termEndsOn: contract.endsOn }, facts.games);
    coveredGames.set(contract.id, new Set([...(coveredGames.get(contract.id) ?? []), ...games.map((game) => game.id)]));
    return lineToShow(commitment, facts, facts.books.get(contract.termId), games, reads.get(commitment.id) ?? []);
  });
  const stands = new Map<string, ReadThatStands[]>();
  for (const own of reads.values()) for (const read of own) append(stands, read.readId, read);
  return {
    views,
    ofNights: {
      stands, everCounted, planned: facts.planned, coveredBy: coveredGames,
      kindNames: new Map(facts.commitments.map(({ id, readKindName }) => [id, readKindName])),
      contractOf: new Map(facts.commitments.map(({ id, contractId }) => [id, contractId])),
    },
  };
}

function lineToShow(commitment: CommitmentRow, facts: LineFacts, books: TermBooks | undefined, games: readonly GameOfSeason[], reads: readonly ReadThatStands[]): LineToShow {
  const { id: commitmentId, readKindId, readKindName, counting } = commitment;
  const line = books?.position?.lines.find((one) => one.terms.lineId === commitmentId);
  const played = games.filter((game) => game.status === 'played');
  const pace = { gamesInAll: games.length, gamesPlayed: played.length, ...(facts.logged.get(commitmentId) ?? NOTHING_LOGGED) };
  const standing = books?.position && line ? standingOf(books.position, commitmentId, pace) : sumOfStandings([]);
  const view: LineFulfillment = {
    commitmentId, readKindId, readKindName, counting, standing,
    planned: facts.planned.filter((row) => row.commitmentId === commitmentId).length,
    shortfall: 0,
    openCents: line ? openCents(line, standing.owed) : 0,
    gamesInAll: pace.gamesInAll,
    gamesPlayed: pace.gamesPlayed,
    brokenFloors: floorsOf(commitment, facts, played),
    forecast: null,
    pace: line
      ? paceByDay({ line, gamesInAll: pace.gamesInAll, playedOn: played.map((game) => game.playedOn), reads, settled: standing.given + standing.madeGood, occurredOn: occurrencesOf(line, books!) })
      : [],
  };
  const gamesCounted = games.filter((game) => facts.isOver.has(game.id)).length;
  return { contractId: commitment.contractId, view, line: line ?? null, logged: facts.logged.get(commitmentId) ?? NOTHING_LOGGED, gamesCounted, gamesLeft: games.length - gamesCounted };
}

/** What is priced by the read is worth its price for each that is owed. */
function openCents(line: LinePosition, owed: number): number {
  const { terms } = line;
  return terms.kind === 'reads' && terms.pricing === 'perRead' ? owed * (terms.priceEachCents ?? terms.rateCents) : openCentsOf(line);
}

function floorsOf({ id, leastPerGame }: CommitmentRow, { readInGames, isOver }: LineFacts, played: readonly GameOfSeason[]): LineFulfillment['brokenFloors'] {
  if (leastPerGame === null) return [];
  const read = new Map(readInGames.filter((row) => row.commitmentId === id).map((row) => [row.gameId, row.reads]));
  const over = played.filter((game) => isOver.has(game.id));
  const days = new Map(over.map((game) => [game.id, game.playedOn]));
  const broken = brokenFloorsOf(leastPerGame, over.map((game) => ({ gameId: game.id, given: read.get(game.id) ?? 0 })));
  return broken.map((floor) => ({ ...floor, playedOn: days.get(floor.gameId)!, label: '' }));
}

/** The days of the happenings that count for a line on occurrence. */
function occurrencesOf(line: LinePosition, { position, happened }: TermBooks): Day[] {
  if (line.terms.kind !== 'reads' || line.terms.counting !== 'onOccurrence') return [];
  return happened.flatMap(({ happening, occurredOn }) => {
    if (happening.kind !== 'occurrenceCounted' || happening.lineId !== line.terms.lineId) return [];
    const stands = position?.occurrences[happening.occurrenceId];
    return stands ? Array<Day>(stands.times).fill(occurredOn) : [];
  });
}

function append<Value>(groups: Map<string, Value[]>, key: string, value: Value): void {
  const group = groups.get(key);
  if (group) group.push(value);
  else groups.set(key, [value]);
}
