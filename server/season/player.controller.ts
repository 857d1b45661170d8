import { Body, Controller, Get, Inject, Param, Patch, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/needs.ts';
import { TheVisitor } from '../access/visitor.ts';
import type { Visitor } from '../access/visitor.ts';
import type { Listed } from '../platform/http/lists.ts';
import { IfMatch } from '../platform/http/version.ts';
import { ChangePlayerDto, PlayerListQuery } from './player.dto.ts';
import type { PlayerView } from './player.dto.ts';
import { PlayerService } from './player.service.ts';

@ApiTags('season')
@Controller('api/players')
export class PlayerController {
  constructor(@Inject(PlayerService) private readonly players: PlayerService) {}

  @Get()
  @Needs('see students')
  async list(@Query() query: PlayerListQuery, @TheVisitor() visitor: Visitor): Promise<Listed<PlayerView>> {
    return this.players.list(query, visitor.roles);
  }

  @Get(':id')
  @Needs('see students')
  async one(@Param('id') id: string, @TheVisitor() visitor: Visitor): Promise<PlayerView> {
    return this.players.one(id, visitor.roles);
  }

  @Patch(':id')
  @Needs('change students')
  async change(
    @Param('id') id: string,
    @IfMatch() version: number,
    @Body() form: ChangePlayerDto,
    @TheVisitor() visitor: Visitor,
  ): Promise<PlayerView> {
    return this.players.change(id, version, form, visitor.roles);
  }
}
