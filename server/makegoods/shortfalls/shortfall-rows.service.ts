import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../../domain/day.ts';
import type { ReadThere } from '../../domain/makegoods/room-in-game.ts';
import type { MissedClaim } from '../../domain/makegoods/missed-reads.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';

export interface TermRow {
  contractId: string;
  termId: string;
  seasonId: string;
  endsOn: Day;
  isInKind: boolean;
  commitmentIds: string[];
}

export interface PlacedThere extends ReadThere {
  gameId: string;
}

/** A read that was planned for a night that is signed off, and was not counted. */
export interface UnreadRow {
  commitmentId: string;
  placementId: string;
  gameId: string;
  nightId: string;
  heldOn: Day;
  windowKey: string;
  outcome: 'given' | 'cutShort' | 'notRead' | null;
  reason: string | null;
  detail: Record<string, unknown> | null;
}

export interface LoggedRow {
  commitmentId: string;
  gameId: string;
  reads: number;
}

export interface NightAndGame {
  nightId: string;
  gameId: string;
  heldOn: Day;
}

export interface MentionsRow extends NightAndGame {
  commitmentId: string;
  /** mentions counted there */
  counted: number;
  /** of those not read in full: why, in the order of the log */
  unread: { outcome: 'cutShort' | 'notRead'; reason: string | null; detail: Record<string, unknown> | null }[];
}

export interface KindRow {
  readKindId: string;
  readKindName: string;
  windows: string[];
  placeGroup: string | null;
  sponsorsPerGame: number;
  /** by season */
  prices: Record<string, number>;
}

export interface ClaimRow extends MissedClaim {
  commitmentId: string;
}

const TERMS = `select contract.id as "contractId", term.id as "termId", term.season_id as "seasonId", term.ends_on as "endsOn", contract.is_in_kind as "isInKind",
    array(select commitment.id from commitment where commitment.department_id = $1 and commitment.term_id = term.id order by commitment.place)::uuid[] as "commitmentIds"
  from contract join lateral (select * from term as latest where latest.department_id = $1 and latest.contract_id = contract.id order by latest.number desc limit 1) as term on true
  where contract.department_id = $1 and contract.id = any($2::uuid[]) and term.signed_on is not null order by contract.id`;

const THERE = `select placement.game_id as "gameId", placement.window_key as "windowKey", read_kind.place_group as "placeGroup", read_kind.id as "readKindId",
    contract.sponsor_id as "sponsorId", placement.commitment_id as "commitmentId", placement.makegood_id is not null as "isMakegood"
  from placement
    join commitment on commitment.department_id = $1 and commitment.id = placement.commitment_id
    join contract on contract.department_id = $1 and contract.id = commitment.contract_id
    left join makegood on makegood.department_id = $1 and makegood.id = placement.makegood_id
    join read_kind on read_kind.department_id = $1 and read_kind.id = coalesce(makegood.replacement_read_kind_id, commitment.read_kind_id)
  where placement.department_id = $1 and placement.game_id = any($2::uuid[])
    and not exists (select from sign_off where sign_off.department_id = $1 and sign_off.night_id = placement.night_id)`;

// What is logged and not counted yet, each read once however often it was logged.
const LOGGED = `select entry.commitment_id as "commitmentId", entry.game_id as "gameId", count(distinct (entry.night_id, entry.cue_key, coalesce(entry.occurrence, 0)))::int as reads
  from log_entry as entry
  where entry.department_id = $1 and entry.commitment_id = any($2::uuid[]) and entry.kind = 'read' and entry.outcome = 'given' and entry.game_id is not null
    and not exists (select from sign_off where sign_off.department_id = $1 and sign_off.night_id = entry.night_id)
    and not exists (select from log_entry as later where later.department_id = $1 and later.takes_back_entry_id = entry.id)
    and not exists (select from placement where placement.department_id = $1 and placement.id = entry.placement_id and placement.makegood_id is not null)
  group by entry.commitment_id, entry.game_id`;

const UNREAD = `select placement.commitment_id as "commitmentId", placement.id as "placementId", placement.game_id as "gameId", placement.night_id as "nightId",
    night.held_on as "heldOn", placement.window_key as "windowKey", entry.outcome, entry.reason, entry.detail
  from placement
    join night on night.department_id = $1 and night.id = placement.night_id
    join game on game.department_id = $1 and game.id = placement.game_id
    left join lateral (
      select log_entry.outcome, log_entry.reason, log_entry.detail from log_entry
      where log_entry.department_id = $1 and log_entry.night_id = placement.night_id and log_entry.kind = 'read'
        and (log_entry.placement_id = placement.id or (log_entry.game_id = placement.game_id and log_entry.cue_key = 'game:' || placement.game_id || '/' || placement.window_key || '/' || placement.place))
        and not exists (select from log_entry as later where later.department_id = $1 and later.takes_back_entry_id = log_entry.id)
      order by log_entry.outcome = 'notRead', log_entry.number desc limit 1) as entry on true
  where placement.department_id = $1 and placement.commitment_id = any($2::uuid[]) and placement.makegood_id is null and game.status not in ('cancelled', 'postponed')
    and exists (select from sign_off where sign_off.department_id = $1 and sign_off.night_id = placement.night_id)
    and not exists (select from counted_read where counted_read.department_id = $1 and counted_read.night_id = placement.night_id and counted_read.game_id = placement.game_id
      and counted_read.cue_key = 'game:' || placement.game_id || '/' || placement.window_key || '/' || placement.place)
    and not exists (select from counted_read join log_entry on log_entry.department_id = $1 and log_entry.id = counted_read.entry_id
      where counted_read.department_id = $1 and counted_read.night_id = placement.night_id and log_entry.placement_id = placement.id)
  order by night.held_on, placement.id`;

const HAPPENED = `select log_entry.id, log_entry.night_id as "nightId", log_entry.game_id as "gameId", night.held_on as "heldOn"
  from log_entry join night on night.department_id = $1 and night.id = log_entry.night_id
  where log_entry.department_id = $1 and log_entry.id = any($2::uuid[]) and log_entry.game_id is not null`;

const MENTIONS = `select entry.commitment_id as "commitmentId", entry.night_id as "nightId", entry.game_id as "gameId", night.held_on as "heldOn",
    coalesce(sum((select count(*) from counted_read where counted_read.department_id = $1 and counted_read.entry_id = entry.id)), 0)::int as counted,
    coalesce(jsonb_agg(jsonb_build_object('outcome', entry.outcome, 'reason', entry.reason, 'detail', entry.detail) order by entry.number)
      filter (where entry.outcome <> 'given' and not exists (select from counted_read where counted_read.department_id = $1 and counted_read.entry_id = entry.id)), '[]') as unread
  from log_entry as entry join night on night.department_id = $1 and night.id = entry.night_id
  where entry.department_id = $1 and entry.commitment_id = any($2::uuid[]) and entry.kind = 'mention' and entry.game_id is not null
    and not exists (select from log_entry as later where later.department_id = $1 and later.takes_back_entry_id = entry.id)
  group by entry.commitment_id, entry.night_id, entry.game_id, night.held_on`;

const KINDS = `select read_kind.id as "readKindId", read_kind.name as "readKindName", read_kind.windows, read_kind.place_group as "placeGroup", read_kind.sponsors_per_game as "sponsorsPerGame",
    coalesce((select jsonb_object_agg(line.season_id, line.price_cents) from rate_card_line as line where line.department_id = $1 and line.read_kind_id = read_kind.id), '{}') as prices
  from read_kind where read_kind.department_id = $1 and read_kind.timing = 'scheduled' order by read_kind.name collate "und-x-icu", read_kind.id`;

const CLAIMS = `select missed_read.commitment_id as "commitmentId", missed_read.proposal_id as "proposalId", missed_read.night_id as "nightId", missed_read.game_id as "gameId",
    missed_read.placement_id as "placementId", proposal.missed_game_id as "slotId",
    proposal.settled_on is null and proposal.makegood_id is null as "isPending"
  from missed_read join makegood_proposal as proposal on proposal.department_id = $1 and proposal.id = missed_read.proposal_id
  where missed_read.department_id = $1 and missed_read.commitment_id = any($2::uuid[]) order by missed_read.proposal_id, missed_read.place`;

/** The rows that shortfalls are worked out from, each in one statement however many contracts there are. */
@Injectable()
export class ShortfallRows {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async terms(contractIds: readonly string[]): Promise<TermRow[]> {
    return this.work.sql<TermRow>(TERMS, [contractIds]);
  }

  /** Everybody's reads in games that are not over. */
  async there(gameIds: readonly string[]): Promise<PlacedThere[]> {
    return gameIds.length === 0 ? [] : this.work.sql<PlacedThere>(THERE, [gameIds]);
  }

  /** Reads that are logged on nights nobody has signed off, by commitment and game. */
  async logged(commitmentIds: readonly string[]): Promise<LoggedRow[]> {
    return this.work.sql<LoggedRow>(LOGGED, [commitmentIds]);
  }

  async unread(commitmentIds: readonly string[]): Promise<UnreadRow[]> {
    return this.work.sql<UnreadRow>(UNREAD, [commitmentIds]);
  }

  /** Where what happened was logged, by the entry's id. */
  async happened(entryIds: readonly string[]): Promise<Map<string, NightAndGame>> {
    if (entryIds.length === 0) return new Map();
    const rows = await this.work.sql<NightAndGame & { id: string }>(HAPPENED, [entryIds]);
    return new Map(rows.map((row) => [row.id, row]));
  }

  async mentions(commitmentIds: readonly string[]): Promise<MentionsRow[]> {
    return commitmentIds.length === 0 ? [] : this.work.sql<MentionsRow>(MENTIONS, [commitmentIds]);
  }

  /** Every scheduled kind of read with its price by season. */
  async kinds(): Promise<KindRow[]> {
    return this.work.sql<KindRow>(KINDS);
  }

  async claims(commitmentIds: readonly string[]): Promise<ClaimRow[]> {
    return this.work.sql<ClaimRow>(CLAIMS, [commitmentIds]);
  }
}
