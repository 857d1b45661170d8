import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../access/department.service.ts';
import type { Day } from '../domain/day.ts';
import { instantAt } from '../domain/instant.ts';
import type { Instant } from '../domain/instant.ts';
import { floorClashes } from '../domain/season/night.ts';
import { statusAfter, whyNotMove } from '../domain/season/game.ts';
import type { GameMove } from '../domain/season/game.ts';
import { usualMinutesOf } from '../domain/season/usual-length.ts';
import { refuse } from '../domain/refusals.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { GameNights } from './game-nights.service.ts';
import { GameReader } from './game-reader.service.ts';
import { GameTeams } from './game-teams.service.ts';
import type { GameDto, GameListQuery, GameView, ResumeDto, ScoreDto } from './game.dto.ts';
import { Game } from './game.entity.ts';
import { Season } from './season.entity.ts';

/** A game's start as a form gives it: a clock on the wall, or so many minutes behind another game. */
export type StartForm = Pick<GameDto, 'startsAtClock' | 'startsAfterGameId' | 'startsAfterMinutes'>;

@Injectable()
export class GameService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(GameReader) private readonly reader: GameReader,
    @Inject(GameNights) private readonly nights: GameNights,
    @Inject(GameTeams) private readonly teams: GameTeams,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  /** One game with its warnings: another game on its floor at that time is one, and no wall. */
  async one(id: string): Promise<GameView> {
    const game = await this.reader.one(id);
    if (!game.nightId) return { ...game, warnings: [] };
    const ofDay: GameListQuery = { from: game.playedOn, to: game.playedOn, perPage: 100 };
    const { data } = await this.reader.list(ofDay);
    const held = data.filter((one) => one.status !== 'cancelled' && one.status !== 'postponed');
    const clashes = floorClashes(
      held.map((one) => ({ ...one, startsAfterGameId: null, startsAfterMinutes: null, usualMinutes: usualMinutesOf(one.sport, one.level) })),
    );
    return { ...game, warnings: clashes.filter((clash) => clash.gameIds.includes(id)).map(({ code, sentence }) => ({ code, sentence })) };
  }

  /** Writes a game with its teams; an announced game with a venue joins or makes its night. Answers the id. */
  async add(form: GameDto): Promise<string> {
    const season = (await this.work.first(Season, { id: form.seasonId })) ?? refuse('unknown-season');
    const { seasonId, level, class: gameClass, announced, playedOn, hostSchoolId, windowsOwnedBy, outsideId } = form;
    if (form.startsAfterGameId && !(await this.work.first(Game, { id: form.startsAfterGameId }))) refuse('unknown-game');
    const [row] = await this.work.insert(Game, {
      ...(form.id ? { id: form.id } : {}),
      seasonId,
      sport: season.sport,
      level,
      playedOn,
      hostSchoolId,
      outsideId,
      ...(await this.startOf(form, playedOn)),
      class: gameClass ?? 'regular',
      announced: announced ?? true,
      windowsOwnedBy: windowsOwnedBy ?? 'us',
      windowOwners: {},
    });
    await this.teams.put(row!.id, seasonId, form.homeTeamId ?? null, form.visitorTeamIds);
    if (announced ?? true) await this.nights.join(row!.id, playedOn, form);
    return row!.id;
  }

  /** Locks the game and checks that a move may be made. */
  async readyFor(id: string, move: GameMove): Promise<GameView> {
    await this.reader.one(id);
    await this.work.lock(Game, [id]);
    const game = await this.reader.one(id);
    const why = whyNotMove(game, move);
    return why ? refuse(why) : game;
  }

  async start(id: string): Promise<GameView> {
    const game = await this.readyFor(id, 'start');
    await this.nights.refuseSignedOff(game.nightIds);
    return this.become(id, 'start', {});
  }

  /** The final score, as the official scorer's book has it. It moves no promise, so it may come after the sign-off. */
  async play(id: string, scores: readonly ScoreDto[]): Promise<GameView> {
    const game = await this.readyFor(id, 'finish');
    await this.teams.score(game, scores);
    return this.become(id, 'finish', {});
  }

  async suspend(id: string, reason: string | null): Promise<GameView> {
    const game = await this.readyFor(id, 'suspend');
    await this.nights.refuseSignedOff(game.nightIds);
    return this.become(id, 'suspend', { statusNote: reason });
  }

  /** The rest of a suspended game, on the same night or on another one. The night it began on may be signed off by now. */
  async resume(id: string, form: ResumeDto): Promise<GameView> {
    const game = await this.readyFor(id, 'resume');
    const heldOn = await this.nights.goOn(game, form.nightId ?? null, form.day ?? game.playedOn);
    const start = form.clock ? await this.startOf({ startsAtClock: form.clock }, heldOn) : {};
    return this.become(id, 'resume', { ...start, ...movedTo(game, heldOn), statusNote: form.reason ?? game.statusNote });
  }

  /** Waits for a new day: the reads promised for it wait with it. */
  async postpone(id: string, reason: string): Promise<GameView> {
    const game = await this.readyFor(id, 'postpone');
    await this.nights.refuseSignedOff(game.nightIds);
    return this.become(id, 'postpone', { statusNote: reason });
  }

  /** To another day: state, night and day change together. A clock that is not given stays. */
  async reschedule(id: string, to: Day, clock: string | null, reason: string): Promise<GameView> {
    const game = await this.readyFor(id, 'reschedule');
    await this.nights.refuseSignedOff(game.nightIds);
    const keeps = clock ?? (game.startsAt ? game.startsClock : null);
    const start = keeps ? await this.startOf({ startsAtClock: keeps }, to) : {};
    if (game.nightId) await this.nights.move(game, to, { venueId: game.venueId!, floorId: game.floorId });
    return this.become(id, 'reschedule', { ...start, ...movedTo(game, to), statusNote: reason });
  }

  async cancel(id: string, reason: string): Promise<GameView> {
    const game = await this.readyFor(id, 'cancel');
    await this.nights.refuseSignedOff(game.nightIds);
    return this.become(id, 'cancel', { statusNote: reason });
  }

  /** Where a start floats it has no clock of its own, and where it has a clock it floats behind nothing. */
  async startOf(form: StartForm, on: Day): Promise<Pick<Game, 'startsAt' | 'startsAfterGameId' | 'startsAfterMinutes'>> {
    if (form.startsAfterGameId) {
      return { startsAt: null, startsAfterGameId: form.startsAfterGameId, startsAfterMinutes: form.startsAfterMinutes ?? 0 };
    }
    const { zone } = await this.departments.here();
    const startsAt: Instant | null = form.startsAtClock ? instantAt(on, form.startsAtClock, zone) : null;
    return { startsAt, startsAfterGameId: null, startsAfterMinutes: null };
  }

  private async become(id: string, move: GameMove, changes: Partial<Game>): Promise<GameView> {
    await this.work.update(Game, id, null, { ...changes, status: statusAfter(move) });
    return this.one(id);
  }
}

/** The day it was first planned for stays known, because its reads are judged by it. */
export function movedTo(game: Pick<GameView, 'playedOn' | 'movedFromOn'>, to: Day): Partial<Game> {
  if (to === game.playedOn) return {};
  return { playedOn: to, movedFromOn: game.movedFromOn ?? game.playedOn };
}
