import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../access/department.service.ts';
import type { Day } from '../domain/day.ts';
import { clockAt, instantAt } from '../domain/instant.ts';
import { refuse } from '../domain/refusals.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Floor } from './floor.entity.ts';
import { GameNight } from './game-night.entity.ts';
import type { GameView } from './game.dto.ts';
import { Night } from './night.entity.ts';
import { Venue } from './venue.entity.ts';

/** Where a game is held, as a form gives it. */
export interface PlaceForm {
  venueId?: string | null;
  floorId?: string | null;
  nightId?: string | null;
}

interface Place {
  venueId: string;
  floorId: string | null;
}

/** Which night a game is held on: one program at one venue on one day. */
@Injectable()
export class GameNights {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  /** @throws Refused `night-already-signed-off` when one of the nights is closed */
  async refuseSignedOff(nightIds: readonly string[]): Promise<void> {
    const rows = await this.work.sql(`select 1 from sign_off where department_id = $1 and night_id = any($2::uuid[])`, [nightIds]);
    if (rows.length > 0) refuse('night-already-signed-off');
  }

  /** Joins the named night, else the night of the venue and day, which is made where there is none. Without a venue it waits. */
  async join(gameId: string, heldOn: Day, form: PlaceForm): Promise<void> {
    if (form.nightId) {
      const night = (await this.work.first(Night, { id: form.nightId })) ?? refuse('unknown-night');
      if (night.heldOn !== heldOn) refuse('unknown-night', {}, { nightId: 'is held on another day' });
      return this.attach(gameId, night.id);
    }
    if (!form.venueId) return;
    const place = await this.placeOf(form.venueId, form.floorId ?? null);
    const night = (await this.nightAt(heldOn, place)) ?? (await this.make(heldOn, place));
    return this.attach(gameId, night.id);
  }

  /** To another day or venue. A night that holds only this game moves as it is, with its people and its note. */
  async move(game: GameView, heldOn: Day, to: PlaceForm): Promise<void> {
    const from = await this.work.one(Night, game.nightId!);
    const place = await this.placeOf(to.venueId ?? from.venueId, to.floorId === undefined && !to.venueId ? from.floorId : (to.floorId ?? null));
    if (from.heldOn === heldOn && from.venueId === place.venueId && (place.floorId === null || place.floorId === from.floorId)) return;
    const target = await this.nightAt(heldOn, place);
    const others = (await this.work.count(GameNight, { nightId: from.id })) - 1;
    if (others === 0 && (!target || target.id === from.id) && !(await this.hasLog(from.id))) {
      await this.work.update(Night, from.id, null, { heldOn, ...place, doorsAt: await this.doorsOn(from, heldOn) });
      return;
    }
    await this.work.remove(GameNight, { gameId: game.id, nightId: from.id });
    await this.attach(game.id, (target ?? (await this.make(heldOn, place))).id);
  }

  /** A suspended game goes on: its first night keeps what was given there. Answers the day it goes on. */
  async goOn(game: GameView, nightId: string | null, day: Day): Promise<Day> {
    const last = game.nightId ? await this.work.one(Night, game.nightId) : null;
    const named = nightId ? ((await this.work.first(Night, { id: nightId })) ?? refuse('unknown-night')) : null;
    const place = last ? { venueId: last.venueId, floorId: last.floorId } : null;
    const night = named ?? (place ? ((await this.nightAt(day, place)) ?? (await this.make(day, place))) : null);
    if (!night) return day;
    if (game.nightIds.includes(night.id)) await this.refuseSignedOff([night.id]);
    else {
      if (last) await this.keepHour(game, last.id);
      await this.attach(game.id, night.id);
    }
    return night.heldOn;
  }

  /** The game's hour is about to be that of its next sitting. */
  private async keepHour(game: GameView, nightId: string): Promise<void> {
    if (game.startsClock === null) return;
    const { zone } = await this.departments.here();
    const [sitting] = await this.work.find(GameNight, { gameId: game.id, nightId });
    if (sitting) await this.work.update(GameNight, sitting.id, null, { startsAt: game.startsAt ?? instantAt(game.playedOn, game.startsClock, zone) });
  }

  async leave(gameId: string): Promise<void> {
    await this.work.remove(GameNight, { gameId });
  }

  /** A night that nothing happened on and nobody prepared goes with its last game; its placements have left before. */
  async tidy(nightIds: readonly string[]): Promise<void> {
    for (const nightId of new Set(nightIds)) if (!(await this.isUsed(nightId))) await this.work.remove(Night, { id: nightId });
  }

  private async attach(gameId: string, nightId: string): Promise<void> {
    await this.refuseSignedOff([nightId]);
    const place = Math.min(32_000, (await this.work.count(GameNight, { nightId })) + 1);
    await this.work.insert(GameNight, { gameId, nightId, place });
  }

  private async placeOf(venueId: string, floorId: string | null): Promise<Place> {
    // Two games that are added at once would make two nights; the venue's lock makes one wait for the other.
    await this.work.lock(Venue, [venueId]);
    if (!(await this.work.first(Venue, { id: venueId }))) refuse('unknown-venue');
    if (floorId && !(await this.work.first(Floor, { id: floorId, venueId }))) refuse('unknown-floor');
    return { venueId, floorId };
  }

  private async nightAt(heldOn: Day, { venueId, floorId }: Place): Promise<Night | null> {
    const nights = await this.work.find(Night, { heldOn, venueId }, { order: { id: 'ASC' } });
    const night = nights.find((one) => one.floorId === floorId) ?? nights.find((one) => one.floorId === null || floorId === null) ?? null;
    if (night && night.floorId === null && floorId !== null) await this.work.update(Night, night.id, null, { floorId });
    return night;
  }

  private async make(heldOn: Day, place: Place): Promise<Night> {
    const [night] = await this.work.insert(Night, { heldOn, ...place });
    return night!;
  }

  private async hasLog(nightId: string): Promise<boolean> {
    return (await this.work.sql(`select 1 from log_entry where department_id = $1 and night_id = $2 limit 1`, [nightId])).length > 0;
  }

  private async doorsOn(night: Night, heldOn: Day): Promise<Night['doorsAt']> {
    if (night.doorsAt === null) return null;
    const { zone } = await this.departments.here();
    return instantAt(heldOn, clockAt(night.doorsAt, zone), zone);
  }

  private async isUsed(nightId: string): Promise<boolean> {
    const [found] = await this.work.sql<{ used: boolean }>(
      `select exists (select 1 from game_night where department_id = $1 and night_id = $2)
         or exists (select 1 from log_entry where department_id = $1 and night_id = $2)
         or exists (select 1 from packet_issue where department_id = $1 and night_id = $2)
         or exists (select 1 from sign_off where department_id = $1 and night_id = $2)
         or exists (select 1 from placement where department_id = $1 and night_id = $2)
         or exists (select 1 from person_of_night where department_id = $1 and night_id = $2) as used`,
      [nightId],
    );
    return found?.used ?? true;
  }
}
