import { Inject, Injectable } from '@nestjs/common';
import { centsOf } from '../../domain/money.ts';
import { beliefBefore, forecastOf, learned } from '../../domain/planning/forecast.ts';
import type { Seen } from '../../domain/planning/forecast.ts';
import { refuse } from '../../domain/refusals.ts';
import type { ReadLine } from '../../domain/sponsorship/contract-terms.ts';
import { coveredGames } from '../../domain/sponsorship/covered-games.ts';
import type { Position } from '../../domain/sponsorship/position.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { TermLedger } from '../../sponsorship/term-ledger.service.ts';
import { PlannedGames } from '../planned-games.service.ts';
import type { PlannedGame } from '../planned-games.service.ts';
import { SignedCommitments } from '../signed-commitments.service.ts';
import type { SignedCommitment } from '../signed-commitments.service.ts';
import type { ForecastView } from './forecast.dto.ts';

/** What was promised on occurrence in earlier seasons of the same sport, whatever became of the contract. */
const EARLIER = `select commitment.id from commitment
    join term on term.department_id = commitment.department_id and term.id = commitment.term_id
    join season on season.department_id = term.department_id and season.id = term.season_id
    join season as this on this.department_id = commitment.department_id and this.id = $2
  where commitment.department_id = $1 and commitment.counting = 'onOccurrence' and term.state in ('signed', 'ended', 'closed')
    and season.sport = this.sport and season.ends_on < this.starts_on
  order by commitment.id`;

const NOTHING_SEEN: Seen = { occurrences: 0, games: 0 };

/** What mentions on occurrence are likely to come to. */
@Injectable()
export class ForecastService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(PlannedGames) private readonly games: PlannedGames,
    @Inject(SignedCommitments) private readonly commitments: SignedCommitments,
    @Inject(TermLedger) private readonly ledger: TermLedger,
  ) {}

  /** @throws Refused `not-found` */
  async ofSeason(seasonId: string): Promise<ForecastView[]> {
    const found = isId(seasonId) ? await this.work.sql('select 1 from season where department_id = $1 and id = $2', [seasonId]) : [];
    if (found.length === 0) refuse('not-found');
    const signed = (await this.commitments.ofSeason(seasonId)).filter((one) => one.counting === 'onOccurrence');
    if (signed.length === 0) return [];
    const earlier = await this.earlier(seasonId);
    const games = await this.games.ofReach([seasonId], signed.flatMap((one) => one.teamIds));
    const positions = await this.ledger.positions([...new Set(signed.map((one) => one.termId))]);
    return signed.map((one) => forecastView(one, positions.get(one.termId), games, earlier.get(happeningOf(one)) ?? NOTHING_SEEN));
  }

  /** What happened in the seasons before those of some commitments on occurrence, by the commitment's id. */
  async earlierOf(commitments: readonly SignedCommitment[]): Promise<Map<string, Seen>> {
    const bySeason = new Map<string, Map<string, Seen>>();
    for (const { seasonId } of commitments) if (!bySeason.has(seasonId)) bySeason.set(seasonId, await this.earlier(seasonId));
    return new Map(commitments.map((one) => [one.id, bySeason.get(one.seasonId)?.get(happeningOf(one)) ?? NOTHING_SEEN]));
  }

  /** Happenings in earlier seasons, by what happens. */
  private async earlier(seasonId: string): Promise<Map<string, Seen>> {
    const ids = await this.work.sql<{ id: string }>(EARLIER, [seasonId]);
    const commitments = [...(await this.commitments.byId(ids.map((row) => row.id))).values()];
    const positions = await this.ledger.positions([...new Set(commitments.map((one) => one.termId))]);
    const games = commitments.length === 0 ? [] : await this.games.ofReach(commitments.map((one) => one.seasonId), commitments.flatMap((one) => one.teamIds));
    const seen = new Map<string, Seen>();
    for (const one of commitments) {
      const before = seen.get(happeningOf(one)) ?? NOTHING_SEEN;
      const here = seenOf(one, positions.get(one.termId), games);
      seen.set(happeningOf(one), { occurrences: before.occurrences + here.occurrences, games: before.games + here.games });
    }
    return seen;
  }
}

/** Both teams' shots are not the same happening as ours. */
const happeningOf = (one: SignedCommitment): string => `${one.occurrence ?? 'bankShot'} ${one.whose}`;

const coveredOf = (one: SignedCommitment, games: readonly PlannedGame[]): PlannedGame[] => coveredGames(one, games);

function lineOf(one: SignedCommitment, position: Position | undefined) {
  return position?.lines.find((line) => line.terms.lineId === one.id);
}

function seenOf(one: SignedCommitment, position: Position | undefined, games: readonly PlannedGame[]): Seen {
  const occurrences = (lineOf(one, position)?.slots ?? []).reduce((sum, slot) => sum + slot.occurrences, 0);
  return { occurrences, games: coveredOf(one, games).filter((game) => game.isSignedOff).length };
}

function forecastView(one: SignedCommitment, position: Position | undefined, games: readonly PlannedGame[], earlier: Seen): ForecastView {
  const seen = seenOf(one, position, games);
  const gamesLeft = coveredOf(one, games).filter((game) => !game.isSignedOff).length;
  const forecast = forecastOf(learned(beliefBefore(earlier), seen), gamesLeft);
  const terms = lineOf(one, position)?.terms as ReadLine | undefined;
  const { readsAtLeast = null, readsAtMost = null } = terms ?? {};
  const more = (limit: number | null): number | null => (limit === null ? null : forecast.chanceOfAtLeast(limit - seen.occurrences));
  return {
    commitmentId: one.id, contractId: one.contractId, sponsorName: one.sponsorName, readKindName: one.readKindName,
    counted: seen.occurrences, gamesCounted: seen.games, gamesLeft,
    expected: Math.round(forecast.mean * 10) / 10, low: forecast.low, middle: forecast.middle, high: forecast.high,
    readsAtLeast, readsAtMost, chanceOfLeast: more(readsAtLeast), chanceOfMost: more(readsAtMost === null ? null : readsAtMost + 1),
    likelyMostCents: likelyMostCents(terms, position, seen.occurrences + forecast.high), earlierGames: earlier.games,
  };
}

/** By the read, between the least and the most of the line, and never beyond the most that the contract bills. */
function likelyMostCents(terms: ReadLine | undefined, position: Position | undefined, reads: number): ForecastView['likelyMostCents'] {
  if (terms?.pricing !== 'perRead') return null;
  const paid = Math.min(Math.max(reads, terms.readsAtLeast ?? 0), terms.readsAtMost ?? Infinity);
  return centsOf(Math.min(paid * (terms.priceEachCents ?? 0), position?.terms.billAtMostCents ?? Infinity));
}
