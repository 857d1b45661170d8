import { Inject, Injectable } from '@nestjs/common';
import { whyNotDelete, whyNotMove } from '../domain/season/game.ts';
import { refuse } from '../domain/refusals.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { GameNights } from './game-nights.service.ts';
import { GameReader } from './game-reader.service.ts';
import { GameService, movedTo } from './game.service.ts';
import { GameTeams } from './game-teams.service.ts';
import type { ChangeGameDto, GameView } from './game.dto.ts';
import { Game } from './game.entity.ts';
import { Season } from './season.entity.ts';

export interface ChangeOptions {
  /** the day is moved by a schedule, so the game is still judged by the day it was first planned for */
  movesDay: boolean;
}

/** Corrections of a game. Day, hour, place and whether it is announced change only while it is planned and not logged. */
@Injectable()
export class GameChange {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(GameReader) private readonly reader: GameReader,
    @Inject(GameService) private readonly games: GameService,
    @Inject(GameNights) private readonly nights: GameNights,
    @Inject(GameTeams) private readonly teams: GameTeams,
  ) {}

  async change(id: string, version: number | null, form: ChangeGameDto, options: ChangeOptions = { movesDay: false }): Promise<GameView> {
    await this.reader.one(id);
    await this.work.lock(Game, [id]);
    const game = await this.reader.one(id);
    const isMoved = changesPlace(game, form);
    if (isMoved) {
      const why = whyNotMove(game, 'reschedule');
      if (why) refuse(why);
      await this.nights.refuseSignedOff(game.nightIds);
    }
    await this.work.update(Game, id, version, {
      ...(await this.facts(game, form)),
      ...(isMoved ? await this.place(game, form, options) : {}),
    });
    await this.changeTeams(game, form);
    if (form.scores) await this.teams.score(await this.reader.one(id), form.scores);
    if (isMoved) await this.changeNight(game, form);
    return this.games.one(id);
  }

  /** Takes a game off the schedule; one with a log never goes. Answers the nights it leaves. */
  async remove(id: string): Promise<string[]> {
    const game = await this.reader.one(id);
    await this.work.lock(Game, [id]);
    const why = whyNotDelete(game);
    if (why) refuse(why);
    await this.nights.refuseSignedOff(game.nightIds);
    for (const after of await this.work.find(Game, { startsAfterGameId: id })) {
      await this.work.update(Game, after.id, null, { startsAfterGameId: null, startsAfterMinutes: null, announced: false });
    }
    await this.nights.leave(id);
    await this.work.remove(Game, { id });
    return game.nightIds;
  }

  private async facts(game: GameView, form: ChangeGameDto): Promise<Partial<Game>> {
    const { level, class: gameClass, hostSchoolId, windowsOwnedBy, outsideId, seasonId } = form;
    const changesSeason = seasonId !== undefined && seasonId !== game.seasonId;
    const season = changesSeason ? ((await this.work.first(Season, { id: seasonId })) ?? refuse('unknown-season')) : null;
    const facts = { level, class: gameClass, hostSchoolId, windowsOwnedBy, outsideId };
    return { ...facts, ...(season ? { seasonId: season.id, sport: season.sport } : {}) };
  }

  private async place(game: GameView, form: ChangeGameDto, { movesDay }: ChangeOptions): Promise<Partial<Game>> {
    const playedOn = form.playedOn ?? game.playedOn;
    const isNewDay = playedOn !== game.playedOn;
    const ownClock = game.startsAt ? game.startsClock : null;
    const startsAfterGameId = form.startsAfterGameId === undefined ? (form.startsAtClock ? null : game.startsAfterGameId) : form.startsAfterGameId;
    if (startsAfterGameId) await this.refuseRing(game.id, startsAfterGameId);
    const start = await this.games.startOf(
      {
        startsAtClock: form.startsAtClock === undefined ? ownClock : form.startsAtClock,
        startsAfterGameId,
        startsAfterMinutes: form.startsAfterMinutes === undefined ? game.startsAfterMinutes : form.startsAfterMinutes,
      },
      playedOn,
    );
    return {
      ...start,
      announced: form.announced,
      ...(movesDay ? movedTo(game, playedOn) : { playedOn }),
      ...(isNewDay ? { status: 'planned' } : {}),
    };
  }

  private async refuseRing(id: string, behind: string): Promise<void> {
    for (let next: string | null = behind, steps = 0; next !== null; steps += 1) {
      if (next === id || steps > 20) refuse('game-follows-itself');
      const game: Game | null = await this.work.first(Game, { id: next });
      if (!game) refuse('unknown-game');
      next = game.startsAfterGameId;
    }
  }

  private async changeTeams(game: GameView, form: ChangeGameDto): Promise<void> {
    if (form.homeTeamId === undefined && form.visitorTeamIds === undefined && form.seasonId === undefined) return;
    const home = form.homeTeamId === undefined ? (game.participants.find((one) => one.isHome)?.teamId ?? null) : form.homeTeamId;
    const visitors = form.visitorTeamIds ?? game.participants.filter((one) => !one.isHome && one.teamId !== home).map((one) => one.teamId);
    await this.teams.put(game.id, form.seasonId ?? game.seasonId, home, visitors);
  }

  private async changeNight(game: GameView, form: ChangeGameDto): Promise<void> {
    const playedOn = form.playedOn ?? game.playedOn;
    const announced = form.announced ?? game.announced;
    if (!announced || form.venueId === null) return game.nightIds.length > 0 ? this.nights.leave(game.id) : undefined;
    const place = { venueId: form.venueId ?? game.venueId, floorId: form.floorId };
    if (form.nightId && form.nightId !== game.nightId) {
      await this.nights.leave(game.id);
      return this.nights.join(game.id, playedOn, form);
    }
    if (!game.nightId) return this.nights.join(game.id, playedOn, { venueId: place.venueId, floorId: place.floorId ?? null });
    const floorId = place.floorId === undefined ? (place.venueId === game.venueId ? game.floorId : null) : place.floorId;
    return this.nights.move(game, playedOn, { venueId: place.venueId, floorId });
  }
}

/** A form may send what stays as it is; only what differs is a move. */
function changesPlace(game: GameView, form: ChangeGameDto): boolean {
  const ownClock = game.startsAt ? game.startsClock : null;
  const differs = <T>(sent: T | undefined, now: T): boolean => sent !== undefined && sent !== now;
  return (
    differs(form.playedOn, game.playedOn) ||
    differs(form.startsAtClock, ownClock) ||
    differs(form.startsAfterGameId, game.startsAfterGameId) ||
    differs(form.startsAfterMinutes, game.startsAfterMinutes) ||
    differs(form.announced, game.announced) ||
    differs(form.venueId, game.venueId) ||
    differs(form.floorId, game.floorId) ||
    differs(form.nightId, game.nightId)
  );
}
