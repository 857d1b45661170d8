import { Inject, Injectable } from '@nestjs/common';
import { statusAtSignOff } from '../../domain/night/sign-off.ts';
import type { GameStatus } from '../../domain/season/game.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { LockedNight, LoggedEntry } from '../log/night-log.service.ts';
import { NightBooking } from './night-booking.service.ts';
import type { NightBooked } from './night-booking.service.ts';
import { NightCounting } from './night-counting.service.ts';
import { WornNumbers } from './worn-numbers.service.ts';

export interface GameOfNight {
  id: string;
  status: GameStatus;
  hasLog: boolean;
}

/** Takes a night's log into everything that follows from it, at sign-off and again whenever something comes later. */
@Injectable()
export class NightBooks {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(NightCounting) private readonly counting: NightCounting,
    @Inject(NightBooking) private readonly booking: NightBooking,
    @Inject(WornNumbers) private readonly worn: WornNumbers,
  ) {}

  /** The games of a night, held until the unit ends. */
  async games(nightId: string): Promise<GameOfNight[]> {
    return this.work.sql<GameOfNight>(
      `select game.id, game.status, exists (select from log_entry where log_entry.department_id = $1 and log_entry.night_id = $2 and log_entry.game_id = game.id) as "hasLog"
         from game_night join game on game.department_id = game_night.department_id and game.id = game_night.game_id
        where game_night.department_id = $1 and game_night.night_id = $2 order by game.id for update of game`,
      [nightId],
    );
  }

  /** @param newIds entries that came after sign-off; null at sign-off itself */
  async takeIn(night: LockedNight, entries: readonly LoggedEntry[], newIds: ReadonlySet<string> | null): Promise<NightBooked> {
    await this.playOut(night.id);
    const counted = await this.counting.count(night.id, entries, newIds !== null, newIds ?? new Set());
    const booked = await this.booking.book(night, counted);
    await this.worn.keep(newIds === null ? entries : entries.filter(({ id }) => newIds.has(id)));
    return booked;
  }

  /** What was logged and not suspended has been played; it is counted only afterwards. */
  private async playOut(nightId: string): Promise<void> {
    const games = await this.games(nightId);
    const played = games.filter(({ status, hasLog }) => status !== 'played' && statusAtSignOff(status, hasLog) === 'played').map(({ id }) => id);
    if (played.length === 0) return;
    await this.work.sql(`update game set status = 'played', version = version + 1 where department_id = $1 and id = any($2::uuid[])`, [played]);
  }
}
