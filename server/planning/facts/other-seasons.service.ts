import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../../domain/day.ts';
import { keptForOthers } from '../../domain/planning/facts/kept-for-others.ts';
import type { Position } from '../../domain/sponsorship/position.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { coveredBy, CoveredGames } from '../../sponsorship/covered-games.service.ts';
import type { GameOfSeason } from '../../sponsorship/covered-games.service.ts';
import type { SignedCommitment } from '../signed-commitments.service.ts';
import { owedOverTerm } from './owed-promises.ts';
import type { ReadElsewhere } from './owed-promises.ts';

export interface AskedOfOthers {
  seasonId: string;
  today: Day;
  signed: readonly SignedCommitment[];
  positions: ReadonlyMap<string, Position>;
  /** reads that have a place anywhere but on the games that are planned */
  elsewhere: readonly ReadElsewhere[];
}

/** What commitments over several seasons keep for the others while one is planned, so that no read is planned twice and none too early. */
@Injectable()
export class OtherSeasons {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(CoveredGames) private readonly covered: CoveredGames,
  ) {}

  /** By the commitment; one that stays within the season keeps nothing and is not named. */
  async keptBy({ seasonId, today, signed, positions, elsewhere }: AskedOfOthers): Promise<Map<string, number>> {
    const naming = signed.filter((one) => one.counting === 'perTerm' && one.teamIds.length > 0);
    const spanning = naming.length === 0 ? [] : await this.spanning(seasonId, naming);
    if (spanning.length === 0) return new Map();
    const games = (await this.covered.ofReach(spanning)).filter((game) => game.status === 'planned' && game.playedOn >= today);
    return new Map(spanning.map((one) => [one.id, keptForOthers(owedOverTerm(one.id, positions.get(one.termId)), seasonsOf(one, games, elsewhere), seasonId)]));
  }

  private async spanning(seasonId: string, naming: readonly SignedCommitment[]): Promise<SignedCommitment[]> {
    const rows = await this.work.sql<{ id: string }>('select id from team where department_id = $1 and id = any($2::uuid[]) and season_id <> $3', [
      [...new Set(naming.flatMap((one) => one.teamIds))], seasonId,
    ]);
    const others = new Set(rows.map((row) => row.id));
    return naming.filter((one) => one.teamIds.some((id) => others.has(id)));
  }
}

/** In the order in which they begin, as the games are. */
function seasonsOf(one: SignedCommitment, games: readonly GameOfSeason[], elsewhere: readonly ReadElsewhere[]) {
  const covered = coveredBy({ ...one, termStartsOn: one.startsOn, termEndsOn: one.endsOn }, games);
  return [...new Set(covered.map((game) => game.seasonId))].map((seasonId) => ({
    seasonId,
    gamesToCome: covered.filter((game) => game.seasonId === seasonId).length,
    placed: elsewhere.filter((read) => read.promiseId === one.id && read.seasonId === seasonId).length,
  }));
}
