import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../domain/day.ts';
import { coveredGames } from '../domain/sponsorship/covered-games.ts';
import type { CoveredGame } from '../domain/sponsorship/covered-games.ts';
import type { Level } from '../domain/season/game.ts';
import type { Counting } from '../domain/sponsorship/contract-terms.ts';
import type { PaceFacts } from '../domain/sponsorship/standing.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';

export interface GameOfSeason extends CoveredGame {
  seasonId: string;
  /** the nights it is played on, first to last */
  nightIds: string[];
}

/** A commitment with the season and days of its term. */
export interface CommitmentOfTerm {
  id: string;
  counting: Counting;
  reads: number;
  startsOn: Day | null;
  endsOn: Day | null;
  teamIds: string[];
  levels: Level[];
  blackoutDays: Day[];
  seasonId: string;
  termStartsOn: Day;
  termEndsOn: Day;
}

const GAMES = `select game.id, game.season_id as "seasonId", game.played_on as "playedOn", game.moved_from_on as "movedFromOn", game.status,
    game.class, game.level, game.announced,
    coalesce(bool_or(participant.is_home and school.is_ours), false) as "isHome",
    coalesce(array_agg(participant.team_id) filter (where school.is_ours), '{}') as "teamIds",
    array(select night.id from game_night join night on night.department_id = $1 and night.id = game_night.night_id
      where game_night.department_id = $1 and game_night.game_id = game.id order by night.held_on, night.id)::uuid[] as "nightIds"
  from game
    left join game_participant as participant on participant.department_id = $1 and participant.game_id = game.id
    left join team on team.department_id = $1 and team.id = participant.team_id
    left join school on school.department_id = $1 and school.id = team.school_id
  where game.department_id = $1 and game.season_id = any($2::uuid[])
  group by game.department_id, game.id order by game.played_on, game.starts_at nulls last, game.id`;

// Each read once, however often it was logged.
const LOGGED = `select "commitmentId", "makegoodId", count(*) as reads from (select entry.commitment_id as "commitmentId", max(placement.makegood_id::text) as "makegoodId"
  from log_entry as entry left join placement on placement.department_id = $1 and placement.id = entry.placement_id
  where entry.department_id = $1 and entry.commitment_id = any($2::uuid[]) and entry.kind in ('read', 'mention') and entry.outcome = 'given'
    and not exists (select 1 from sign_off where sign_off.department_id = $1 and sign_off.night_id = entry.night_id)
    and not exists (select 1 from log_entry as later where later.department_id = $1 and later.takes_back_entry_id = entry.id)
  group by entry.commitment_id, entry.night_id, entry.game_id, case when entry.kind = 'read' then entry.cue_key else coalesce(entry.happening_entry_id, entry.id)::text end, coalesce(entry.occurrence, 0)) as logged
  group by "commitmentId", "makegoodId"`;

/** What is logged as given on nights that are not signed off. */
export type LoggedReads = Pick<PaceFacts, 'loggedNotSignedOff' | 'loggedMakegoods'>;

export const NOTHING_LOGGED: LoggedReads = { loggedNotSignedOff: 0 };

/** The games over which commitments count, and what the calendar and the log say of their pace. */
@Injectable()
export class CoveredGames {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async ofSeasons(seasonIds: readonly string[]): Promise<GameOfSeason[]> {
    return seasonIds.length === 0 ? [] : this.work.sql<GameOfSeason>(GAMES, [[...new Set(seasonIds)]]);
  }

  /** Reads logged as given on nights that are not signed off, by commitment. */
  async loggedNotSignedOff(commitmentIds: readonly string[]): Promise<Map<string, LoggedReads>> {
    if (commitmentIds.length === 0) return new Map();
    const rows = await this.work.sql<{ commitmentId: string; makegoodId: string | null; reads: number }>(LOGGED, [commitmentIds]);
    const logged = new Map<string, LoggedReads>();
    for (const { commitmentId, makegoodId, reads } of rows) {
      const { loggedNotSignedOff, loggedMakegoods = new Map() } = logged.get(commitmentId) ?? NOTHING_LOGGED;
      logged.set(commitmentId, { loggedNotSignedOff: loggedNotSignedOff + reads, loggedMakegoods: makegoodId === null ? loggedMakegoods : new Map([...loggedMakegoods, [makegoodId, reads]]) });
    }
    return logged;
  }

  /** The games of all seasons that commitments reach into: their terms' own, and those of teams that they name. */
  async ofReach(commitments: readonly Pick<CommitmentOfTerm, 'seasonId' | 'teamIds'>[]): Promise<GameOfSeason[]> {
    return this.ofSeasons(await this.seasonsOf(commitments));
  }

  private async seasonsOf(commitments: readonly Pick<CommitmentOfTerm, 'seasonId' | 'teamIds'>[]): Promise<string[]> {
    const own = commitments.map((one) => one.seasonId);
    const teamIds = [...new Set(commitments.flatMap((one) => one.teamIds))];
    if (teamIds.length === 0) return own;
    const named = await this.work.sql<{ seasonId: string }>('select distinct season_id as "seasonId" from team where department_id = $1 and id = any($2::uuid[])', [teamIds]);
    return [...own, ...named.map((row) => row.seasonId)];
  }

  /** What pace needs to know of each commitment, in two statements for all of them. */
  async paceOf(commitments: readonly CommitmentOfTerm[]): Promise<Map<string, PaceFacts>> {
    if (commitments.length === 0) return new Map();
    const games = await this.ofReach(commitments);
    const loggedOf = await this.loggedNotSignedOff(commitments.map((one) => one.id));
    return new Map(
      commitments.map((commitment) => {
        const covered = coveredBy(commitment, games);
        const gamesPlayed = covered.filter((game) => game.status === 'played').length;
        return [commitment.id, { gamesInAll: covered.length, gamesPlayed, ...(loggedOf.get(commitment.id) ?? NOTHING_LOGGED) }];
      }),
    );
  }
}

/** The games that a commitment covers, by its own days or else its term's: of its term's season, or of the teams it names. */
export function coveredBy(commitment: CommitmentOfTerm, games: readonly GameOfSeason[]): GameOfSeason[] {
  const days = { startsOn: commitment.startsOn ?? commitment.termStartsOn, endsOn: commitment.endsOn ?? commitment.termEndsOn };
  return coveredGames({ ...commitment, ...days }, games);
}
