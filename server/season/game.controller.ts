import { Body, Controller, Get, HttpCode, Inject, Param, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/needs.ts';
import type { Listed } from '../platform/http/lists.ts';
import { GameListQuery, PlayDto, SuspendDto } from './game.dto.ts';
import type { GameView } from './game.dto.ts';
import { GameReader } from './game-reader.service.ts';
import { GameService } from './game.service.ts';

/** What moves no promise. Adding, changing, postponing, resuming and cancelling reach the contracts: see the planning room. */
@ApiTags('season')
@Controller('api/games')
export class GameController {
  constructor(
    @Inject(GameReader) private readonly reader: GameReader,
    @Inject(GameService) private readonly games: GameService,
  ) {}

  @Get()
  @Needs('see the season')
  async list(@Query() query: GameListQuery): Promise<Listed<GameView>> {
    return this.reader.list(query);
  }

  @Get(':id')
  @Needs('see the season')
  async one(@Param('id') id: string): Promise<GameView> {
    return this.games.one(id);
  }

  @Post(':id/start')
  @HttpCode(200)
  @Needs('log a night')
  async start(@Param('id') id: string): Promise<GameView> {
    return this.games.start(id);
  }

  @Post(':id/play')
  @HttpCode(200)
  @Needs('log a night')
  async play(@Param('id') id: string, @Body() form: PlayDto): Promise<GameView> {
    return this.games.play(id, form.scores);
  }

  @Post(':id/suspend')
  @HttpCode(200)
  @Needs('log a night')
  async suspend(@Param('id') id: string, @Body() form: SuspendDto): Promise<GameView> {
    return this.games.suspend(id, form.reason ?? null);
  }
}
