import { Inject, Injectable } from '@nestjs/common';
import { In } from 'typeorm';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Placement } from './placement.entity.ts';
import { HeldPlace } from './proposals/held-place.entity.ts';
import { SeasonPlans } from './proposals/season-plans.service.ts';

/** Where a placement that nobody has logged stands, and the latest night of its game. */
interface Standing {
  id: string;
  nightId: string;
  isCancelled: boolean;
  /** the game has come to lie on a day on which nothing of the commitment is read */
  isBlackedOut: boolean;
  latestNightId: string | null;
}

const STANDING = `select placement.id, placement.night_id as "nightId", game.status = 'cancelled' as "isCancelled", game.played_on = any(commitment.blackout_days) as "isBlackedOut",
    (select night.id from game_night join night on night.department_id = $1 and night.id = game_night.night_id
      where game_night.department_id = $1 and game_night.game_id = game.id order by night.held_on desc, night.id desc limit 1) as "latestNightId"
  from placement join game on game.department_id = placement.department_id and game.id = placement.game_id
  join commitment on commitment.department_id = placement.department_id and commitment.id = placement.commitment_id
  where placement.department_id = $1 and placement.game_id = any($2::uuid[])
    and not exists (select 1 from log_entry where log_entry.department_id = $1 and log_entry.placement_id = placement.id)`;

/** Room that is held for offers at games of another night, and the night it is to be held on now; null where it is held no more. */
const HELD = `select held_place.id, held_place.offer_line_id as "offerLineId", held_place.game_id as "gameId", held_place.window_key as "windowKey", held_place.place,
    case when game.status = 'cancelled' then null else latest.night_id end as "nightId"
  from held_place join game on game.department_id = held_place.department_id and game.id = held_place.game_id
  left join lateral (select night.id as night_id from game_night join night on night.department_id = $1 and night.id = game_night.night_id
    where game_night.department_id = $1 and game_night.game_id = game.id order by night.held_on desc, night.id desc limit 1) as latest on true
  where held_place.department_id = $1 and held_place.game_id = any($2::uuid[])
    and (game.status = 'cancelled' or latest.night_id is distinct from held_place.night_id)`;

type HeldRow = Omit<HeldPlace, 'departmentId' | 'nightId'> & { nightId: string | null };

/** Planned reads go where their game goes; those of a game that is not held any more are gone. What was logged stays. */
@Injectable()
export class PlacementsFollow {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(SeasonPlans) private readonly plans: SeasonPlans,
  ) {}

  async follow(gameIds: readonly string[]): Promise<void> {
    await this.followHeld(gameIds);
    const standing = await this.work.sql<Standing>(STANDING, [gameIds]);
    if (standing.length > 0) await this.plans.moveOnWith(gameIds);
    const gone = standing.filter((one) => one.isCancelled || one.isBlackedOut || one.latestNightId === null).map((one) => one.id);
    if (gone.length > 0) await this.work.remove(Placement, { id: In(gone) });
    for (const { id, nightId, latestNightId } of standing) {
      if (!gone.includes(id) && latestNightId !== nightId) await this.work.update(Placement, id, null, { nightId: latestNightId! });
    }
  }

  /** A claim is not changed: it is given up and made anew. */
  private async followHeld(gameIds: readonly string[]): Promise<void> {
    const held = await this.work.sql<HeldRow>(HELD, [gameIds]);
    if (held.length === 0) return;
    await this.plans.moveOnWith(gameIds);
    await this.work.remove(HeldPlace, { id: In(held.map((one) => one.id)) });
    await this.work.insert(HeldPlace, held.flatMap(({ nightId, ...one }) => (nightId === null ? [] : [{ ...one, nightId }])));
  }

  /** Before a game leaves the schedule for good. */
  async drop(gameId: string): Promise<void> {
    const standing = await this.work.sql<Standing>(STANDING, [[gameId]]);
    if (standing.length === 0) return;
    await this.plans.moveOnWith([gameId]);
    await this.work.remove(Placement, { id: In(standing.map((one) => one.id)) });
  }
}
