import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../domain/day.ts';
import { windowsNarrowed } from '../domain/season/window-names.ts';
import type { Counting } from '../domain/sponsorship/contract-terms.ts';
import type { Separation } from '../domain/sponsorship/separation.ts';
import type { Level } from '../domain/season/game.ts';
import type { WindowKind } from '../domain/season/sport-profile.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { reachesInto } from '../sponsorship/reaches-into.ts';

/** A commitment with its term, its kind of read and whose it is. */
export interface SignedCommitment {
  id: string;
  termId: string;
  termState: 'draft' | 'signed' | 'ended' | 'closed';
  seasonId: string;
  contractId: string;
  sponsorId: string;
  sponsorName: string;
  categoryId: string;
  sponsorSayAs: string | null;
  readKindId: string;
  readKindName: string;
  /** the kind's, narrowed to those of the commitment */
  windows: string[];
  placeGroup: string | null;
  sponsorsPerGame: number;
  defaultSeconds: number;
  occurrence: string | null;
  counting: Counting;
  reads: number;
  whose: 'ours' | 'both';
  severalCountAsOne: boolean;
  startsOn: Day;
  endsOn: Day;
  teamIds: string[];
  levels: Level[];
  leastPerGame: number | null;
  mostPerGame: number | null;
  blackoutDays: Day[];
  /** games in which a read was promised aloud */
  pinnedGameIds: string[];
  separation: Separation;
  priority: number;
  /** since when the contract is on hold; null where no hold stands */
  heldOn: Day | null;
}

const HELD_ON = `(select hold.held_on from contract_hold as hold where hold.department_id = $1 and hold.contract_id = commitment.contract_id and hold.lifts_hold_id is null
      and not exists (select from contract_hold as lift where lift.department_id = $1 and lift.lifts_hold_id = hold.id) limit 1)`;

const SELECT = `select commitment.id, commitment.term_id as "termId", term.state as "termState", term.season_id as "seasonId", commitment.contract_id as "contractId",
    sponsor.id as "sponsorId", sponsor.name as "sponsorName", sponsor.category_id as "categoryId", sponsor.say_as as "sponsorSayAs", read_kind.id as "readKindId", read_kind.name as "readKindName",
    read_kind.windows, read_kind.sponsors_per_game as "sponsorsPerGame", read_kind.default_seconds as "defaultSeconds", read_kind.occurrence, read_kind.place_group as "placeGroup",
    commitment.counting, commitment.reads, commitment.whose, commitment.several_count_as_one as "severalCountAsOne",
    coalesce(commitment.starts_on, term.starts_on) as "startsOn", coalesce(commitment.ends_on, term.ends_on) as "endsOn",
    commitment.team_ids as "teamIds", commitment.levels, commitment.least_per_game as "leastPerGame", commitment.most_per_game as "mostPerGame", commitment.priority,
    commitment.window_kinds as "windowKinds", commitment.blackout_days as "blackoutDays", commitment.pinned_game_ids as "pinnedGameIds", commitment.separation,
    ${HELD_ON} as "heldOn"
  from commitment
  join term on term.department_id = commitment.department_id and term.id = commitment.term_id
  join contract on contract.department_id = commitment.department_id and contract.id = commitment.contract_id
  join sponsor on sponsor.department_id = contract.department_id and sponsor.id = contract.sponsor_id
  join read_kind on read_kind.department_id = commitment.department_id and read_kind.id = commitment.read_kind_id
  where commitment.department_id = $1`;

@Injectable()
export class SignedCommitments {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /** Those of a season, or that name teams of it, whose terms are signed and neither ended, closed nor on hold. */
  async ofSeason(seasonId: string): Promise<SignedCommitment[]> {
    return this.load(`and (term.season_id = $2 or ${reachesInto('commitment.team_ids', 'array[$2::uuid]')}) and term.state = 'signed' and ${HELD_ON} is null order by commitment.id`, [seasonId]);
  }

  /** By id, signed or not: the caller looks at the state. */
  async byId(ids: readonly string[]): Promise<Map<string, SignedCommitment>> {
    if (ids.length === 0) return new Map();
    const rows = await this.load(`and commitment.id = any($2::uuid[])`, [[...new Set(ids)]]);
    return new Map(rows.map((row) => [row.id, row]));
  }

  /** As much as the log has to know of a commitment that an entry names. */
  async countingById(ids: readonly string[]): Promise<Map<string, Pick<SignedCommitment, 'id' | 'counting' | 'termState'>>> {
    if (ids.length === 0) return new Map();
    const rows = await this.work.sql<Pick<SignedCommitment, 'id' | 'counting' | 'termState'>>(
      `select commitment.id, commitment.counting, term.state as "termState" from commitment
         join term on term.department_id = $1 and term.id = commitment.term_id where commitment.department_id = $1 and commitment.id = any($2::uuid[])`,
      [[...new Set(ids)]],
    );
    return new Map(rows.map((row) => [row.id, row]));
  }

  /** What is owed when something happens on the floor, between two days; of signed terms. */
  async onOccurrence(from: Day, to: Day): Promise<SignedCommitment[]> {
    return this.load(
      `and commitment.counting = 'onOccurrence' and term.state = 'signed'
         and coalesce(commitment.starts_on, term.starts_on) <= $3 and coalesce(commitment.ends_on, term.ends_on) >= $2
       order by commitment.priority, commitment.id`,
      [from, to],
    );
  }

  private async load(where: string, parameters: readonly unknown[]): Promise<SignedCommitment[]> {
    const rows = await this.work.sql<SignedCommitment & { windowKinds: WindowKind[] }>(`${SELECT} ${where}`, parameters);
    return rows.map(({ windowKinds, ...row }) => ({ ...row, windows: windowsNarrowed(row.windows, windowKinds) }));
  }
}
