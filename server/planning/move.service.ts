import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../access/department.service.ts';
import type { Day } from '../domain/day.ts';
import { refuse } from '../domain/refusals.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { GameChange } from '../season/game-change.service.ts';
import { GameNights } from '../season/game-nights.service.ts';
import { GameReader } from '../season/game-reader.service.ts';
import { GameService } from '../season/game.service.ts';
import type { CancelDto, ChangeGameDto, GameDto, GameView, PostponeDto, ResumeDto, SuspendDto } from '../season/game.dto.ts';
import { GamePromises } from './game-promises.service.ts';
import { PlacementsFollow } from './placements-follow.service.ts';

/** Changes of the calendar that reach what was promised and planned: all in one unit. */
@Injectable()
export class MoveService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(GameReader) private readonly reader: GameReader,
    @Inject(GameService) private readonly games: GameService,
    @Inject(GameChange) private readonly changes: GameChange,
    @Inject(GameNights) private readonly nights: GameNights,
    @Inject(GamePromises) private readonly promises: GamePromises,
    @Inject(PlacementsFollow) private readonly placements: PlacementsFollow,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  async add(form: GameDto): Promise<GameView> {
    return this.inCalendar([form.seasonId], null, () => this.games.add(form));
  }

  async change(id: string, version: number, form: ChangeGameDto): Promise<GameView> {
    const game = await this.reader.one(id);
    return this.inCalendar([game.seasonId, form.seasonId ?? game.seasonId], null, async () => (await this.changes.change(id, version, form)).id);
  }

  async postpone(id: string, form: PostponeDto): Promise<GameView> {
    const { to, clock } = form;
    return this.ofGame(id, null, async () => {
      if (to) await this.games.reschedule(id, to, clock ?? null, form.reason);
      else await this.games.postpone(id, form.reason);
    });
  }

  /** The reads still owed in it wait until it goes on. */
  async suspend(id: string, form: SuspendDto): Promise<GameView> {
    return this.games.suspend(id, form.reason ?? null);
  }

  async resume(id: string, form: ResumeDto): Promise<GameView> {
    return this.ofGame(id, null, async () => {
      await this.games.resume(id, form);
    });
  }

  async cancel(id: string, form: CancelDto): Promise<GameView> {
    return this.ofGame(id, form.on ?? null, async () => {
      await this.refuseCounted(id);
      await this.games.cancel(id, form.reason);
    });
  }

  /** Runs several changes of one season's calendar and settles them together. */
  async inCalendar(seasonIds: readonly string[], on: Day | null, work: () => Promise<string>): Promise<GameView> {
    const before = await this.promises.before(seasonIds);
    const id = await work();
    const nightIds = before.games.filter((game) => game.id === id).flatMap((game) => game.nightIds);
    await this.placements.follow([id]);
    await this.nights.tidy(nightIds);
    await this.promises.settle(before, id, on ?? (await this.departments.today()));
    return this.games.one(id);
  }

  private async ofGame(id: string, on: Day | null, work: () => Promise<void>): Promise<GameView> {
    const game = await this.reader.one(id);
    return this.inCalendar([game.seasonId], on, async () => {
      await work();
      return id;
    });
  }

  private async refuseCounted(id: string): Promise<void> {
    const rows = await this.work.sql('select 1 from counted_read where department_id = $1 and game_id = $2 limit 1', [id]);
    if (rows.length > 0) refuse('game-has-counted-read');
  }
}
