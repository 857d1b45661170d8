import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../../domain/day.ts';
import type { LogEntry } from '../../domain/night/log-entry.ts';
import { refuse } from '../../domain/refusals.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';

export interface LockedNight {
  id: string;
  heldOn: Day;
  isSignedOff: boolean;
}

/** A row of the log with the names that go beside it. */
export interface LoggedEntry extends LogEntry {
  contentDigest: string;
  windowKey: string | null;
  recordedAt: string;
  loggedByName: string | null;
  sponsorName: string | null;
  readKindName: string | null;
  teamName: string | null;
  /** of the entry that this one takes back */
  takesBackNumber: number | null;
}

const LOG = `select log_entry.id, log_entry.night_id as "nightId", log_entry.game_id as "gameId", log_entry.number, log_entry.device_id as "deviceId", log_entry.sequence,
    log_entry.kind, log_entry.outcome, log_entry.reason, log_entry.cue_key as "cueKey", log_entry.occurrence, log_entry.placement_id as "placementId",
    log_entry.commitment_id as "commitmentId", log_entry.window_key as "windowKey", log_entry.team_id as "teamId", log_entry.player_id as "playerId",
    log_entry.player_number as "playerNumber", log_entry.period, log_entry.clock, log_entry.detail, log_entry.happening_entry_id as "happeningEntryId",
    log_entry.takes_back_entry_id as "takesBackEntryId", log_entry.occurred_at as "occurredAt", log_entry.content_digest as "contentDigest",
    log_entry.recorded_at as "recordedAt", coalesce(person.name, link.label) as "loggedByName", sponsor.name as "sponsorName", read_kind.name as "readKindName", school.nickname as "teamName",
    taken.number as "takesBackNumber"
  from log_entry
  left join person on person.id = log_entry.logged_by_person_id
  left join link on link.department_id = $1 and link.id = log_entry.logged_by_link_id
  left join commitment on commitment.department_id = $1 and commitment.id = log_entry.commitment_id
  left join read_kind on read_kind.department_id = $1 and read_kind.id = commitment.read_kind_id
  left join contract on contract.department_id = $1 and contract.id = commitment.contract_id
  left join sponsor on sponsor.department_id = $1 and sponsor.id = contract.sponsor_id
  left join team on team.department_id = $1 and team.id = log_entry.team_id
  left join log_entry taken on taken.department_id = $1 and taken.id = log_entry.takes_back_entry_id
  left join school on school.department_id = $1 and school.id = team.school_id
  where log_entry.department_id = $1 and log_entry.night_id = $2`;

const ALL = `${LOG} order by log_entry.number`;
const AFTER = `${LOG} and log_entry.number > $3 order by log_entry.number limit $4`;

@Injectable()
export class NightLog {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /** Holds the night until the unit ends: what is numbered, counted or signed off on it goes one by one. */
  async lock(nightId: string): Promise<LockedNight> {
    if (!isId(nightId)) refuse('not-found');
    const rows = await this.work.sql('select 1 from night where department_id = $1 and id = $2 for update', [nightId]);
    if (rows.length === 0) refuse('not-found');
    return this.night(nightId);
  }

  /** Lets nobody sign the night off, nor log on it, until the unit ends; others may hold it as well. */
  async hold(nightId: string): Promise<LockedNight> {
    if (!isId(nightId)) refuse('not-found');
    await this.work.sql('select 1 from night where department_id = $1 and id = $2 for share', [nightId]);
    return this.night(nightId);
  }

  async night(nightId: string): Promise<LockedNight> {
    if (!isId(nightId)) refuse('not-found');
    const [night] = await this.work.sql<LockedNight>(
      `select id, held_on as "heldOn", exists (select from sign_off where sign_off.department_id = $1 and sign_off.night_id = night.id) as "isSignedOff"
         from night where department_id = $1 and id = $2`,
      [nightId],
    );
    return night ?? refuse('not-found');
  }

  /** Of the latest entry; 0 before the first. */
  async lastNumber(nightId: string): Promise<number> {
    const [row] = await this.work.sql<{ last: number }>('select coalesce(max(number), 0) as last from log_entry where department_id = $1 and night_id = $2', [nightId]);
    return row!.last;
  }

  async entries(nightId: string): Promise<LoggedEntry[]> {
    return this.work.sql<LoggedEntry>(ALL, [nightId]);
  }

  /** Those numbered above, in order, at most so many. */
  async entriesAfter(nightId: string, number: number, limit: number): Promise<LoggedEntry[]> {
    return this.work.sql<LoggedEntry>(AFTER, [nightId, number, limit]);
  }
}
