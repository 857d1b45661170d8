import { Body, Controller, HttpCode, Inject, Param, Patch, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/needs.ts';
import { IfMatch } from '../platform/http/version.ts';
import { CancelDto, ChangeGameDto, GameDto, PostponeDto, ResumeDto } from '../season/game.dto.ts';
import type { GameView } from '../season/game.dto.ts';
import { MoveService } from './move.service.ts';

/** What happens to the calendar after contracts are signed. */
@ApiTags('season')
@Controller('api/games')
export class MoveController {
  constructor(@Inject(MoveService) private readonly moves: MoveService) {}

  @Post()
  @Needs('change the season')
  async add(@Body() form: GameDto): Promise<GameView> {
    return this.moves.add(form);
  }

  @Patch(':id')
  @Needs('change the season')
  async change(@Param('id') id: string, @IfMatch() version: number, @Body() form: ChangeGameDto): Promise<GameView> {
    return this.moves.change(id, version, form);
  }

  @Post(':id/postpone')
  @HttpCode(200)
  @Needs('change the season')
  async postpone(@Param('id') id: string, @Body() form: PostponeDto): Promise<GameView> {
    return this.moves.postpone(id, form);
  }

  @Post(':id/resume')
  @HttpCode(200)
  @Needs('change the season')
  async resume(@Param('id') id: string, @Body() form: ResumeDto): Promise<GameView> {
    return this.moves.resume(id, form);
  }

  @Post(':id/cancel')
  @HttpCode(200)
  @Needs('change the season')
  async cancel(@Param('id') id: string, @Body() form: CancelDto): Promise<GameView> {
    return this.moves.cancel(id, form);
  }
}
