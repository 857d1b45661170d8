import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../../domain/day.ts';
import type { KindToPlan } from '../../domain/planning/facts/promise-to-plan.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { offerHoldsOn } from '../../sponsorship/offers/offer-view.sql.ts';
import { reachesInto } from '../../sponsorship/reaches-into.ts';
import type { MakegoodToPlan } from './owed-promises.ts';
import type { PlanLine } from './plan-line.ts';

/** Where a read stands now. */
export interface PlacedRow {
  id: string;
  promiseId: string;
  gameId: string;
  seasonId: string;
  nightId: string;
  windowKey: string;
  place: number;
  isPinned: boolean;
  isLogged: boolean;
  /** its night is not signed off, and its game still to be played or under way */
  isOpen: boolean;
  /** its game waits to be gone on with */
  isWaiting: boolean;
}

/** Where room is kept for an open offer. */
export interface HeldRow {
  offerLineId: string;
  gameId: string;
  windowKey: string;
  place: number;
}

export interface NightRow {
  id: string;
  halftimeSeconds: number | null;
  isLocked: boolean;
}

const KIND = `read_kind.id as "readKindId", read_kind.name as "readKindName", read_kind.place_group as "placeGroup", read_kind.sponsors_per_game as "sponsorsPerGame",
    read_kind.default_seconds as seconds, read_kind.windows as "kindWindows"`;

// What is planned on or after the day its contract ended is not read any more: it takes no place.
const PLACED = `select placement.id, coalesce(placement.makegood_id, placement.commitment_id) as "promiseId", placement.game_id as "gameId", placement.night_id as "nightId",
    placement.window_key as "windowKey", placement.place, placement.is_pinned as "isPinned",
    exists (select from log_entry where log_entry.department_id = $1 and log_entry.placement_id = placement.id) as "isLogged",
    not exists (select from sign_off where sign_off.department_id = $1 and sign_off.night_id = placement.night_id)
      and game.status not in ('cancelled', 'postponed') as "isOpen", game.status = 'suspended' as "isWaiting", game.season_id as "seasonId"
  from placement
    join game on game.department_id = placement.department_id and game.id = placement.game_id
    join commitment on commitment.department_id = placement.department_id and commitment.id = placement.commitment_id
    join term on term.department_id = commitment.department_id and term.id = commitment.term_id
    join night on night.department_id = placement.department_id and night.id = placement.night_id
  where placement.department_id = $1 and (game.season_id = $2 or term.season_id = $2 or ${reachesInto('commitment.team_ids', 'array[$2::uuid]')})
    and (term.ended_on is null or term.ended_on > night.held_on or exists (select from log_entry where log_entry.department_id = $1 and log_entry.placement_id = placement.id))
  order by placement.id`;

const OFFERED = `select offer_line.id, offer.id as "dealId", offer.sponsor_id as "sponsorId", sponsor.name as "sponsorName", sponsor.category_id as "categoryId",
    offer_line.counting, offer_line.quantity as reads, coalesce(offer_line.starts_on, offer.starts_on) as "startsOn", coalesce(offer_line.ends_on, offer.ends_on) as "endsOn",
    offer_line.team_ids as "teamIds", offer_line.levels, offer_line.window_kinds as "windowKinds", offer_line.blackout_days as "blackoutDays",
    offer_line.pinned_game_ids as "pinnedGameIds", offer_line.least_per_game as "leastPerGame", offer_line.most_per_game as "mostPerGame",
    offer_line.separation, offer_line.priority, offer_line.read_kind_id as "readKindId"
  from offer
    join offer_line on offer_line.department_id = offer.department_id and offer_line.offer_id = offer.id
    join sponsor on sponsor.department_id = offer.department_id and sponsor.id = offer.sponsor_id
  where offer.department_id = $1 and offer.season_id = $2 and ${offerHoldsOn('$3')}
    and offer_line.read_kind_id is not null and offer_line.counting is not null and offer_line.counting <> 'onOccurrence'
  order by offer_line.id`;

const HELD = `select held_place.offer_line_id as "offerLineId", held_place.game_id as "gameId", held_place.window_key as "windowKey", held_place.place
  from held_place join game on game.department_id = held_place.department_id and game.id = held_place.game_id
  where held_place.department_id = $1 and game.season_id = $2 order by held_place.id`;

/** The rows that a season's plan is made from, each in one statement. */
@Injectable()
export class FactsRows {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async isSeason(id: string): Promise<boolean> {
    return isId(id) && (await this.work.sql('select 1 from season where department_id = $1 and id = $2', [id])).length > 0;
  }

  async placed(seasonId: string): Promise<PlacedRow[]> {
    return this.work.sql<PlacedRow>(PLACED, [seasonId]);
  }

  async held(seasonId: string): Promise<HeldRow[]> {
    return this.work.sql<HeldRow>(HELD, [seasonId]);
  }

  async nights(ids: readonly string[]): Promise<Map<string, NightRow>> {
    const rows = await this.work.sql<NightRow>(
      `select night.id, night.halftime_seconds as "halftimeSeconds",
         exists (select from night_lock where night_lock.department_id = $1 and night_lock.night_id = night.id) as "isLocked"
       from night where night.department_id = $1 and night.id = any($2::uuid[])`,
      [[...new Set(ids)]],
    );
    return new Map(rows.map((row) => [row.id, row]));
  }

  async makegoods(commitmentIds: readonly string[]): Promise<MakegoodToPlan[]> {
    if (commitmentIds.length === 0) return [];
    return this.work.sql<MakegoodToPlan>(
      `select makegood.id, makegood.commitment_id as "commitmentId", ${KIND} from makegood
         join read_kind on read_kind.department_id = makegood.department_id and read_kind.id = makegood.replacement_read_kind_id
       where makegood.department_id = $1 and makegood.commitment_id = any($2::uuid[]) order by makegood.id`,
      [commitmentIds],
    );
  }

  /** Lines of open offers that keep room and have not lapsed on this day. */
  async offered(seasonId: string, today: Day): Promise<(PlanLine & { dealId: string })[]> {
    return this.work.sql<PlanLine & { dealId: string }>(OFFERED, [seasonId, today]);
  }

  async kinds(ids: readonly string[]): Promise<Map<string, KindToPlan>> {
    if (ids.length === 0) return new Map();
    const rows = await this.work.sql<KindToPlan>(`select ${KIND} from read_kind where read_kind.department_id = $1 and read_kind.id = any($2::uuid[])`, [[...new Set(ids)]]);
    return new Map(rows.map((row) => [row.readKindId, row]));
  }

  /** Names of the sponsors of lines that are asked about. */
  async sponsors(ids: readonly string[]): Promise<Map<string, { name: string; categoryId: string }>> {
    if (ids.length === 0) return new Map();
    const rows = await this.work.sql<{ id: string; name: string; categoryId: string }>(
      'select id, name, category_id as "categoryId" from sponsor where department_id = $1 and id = any($2::uuid[])',
      [[...new Set(ids)]],
    );
    return new Map(rows.map((row) => [row.id, row]));
  }
}
