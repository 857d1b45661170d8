import { Controller, HttpCode, Inject, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/needs.ts';
import { TheVisitor } from '../access/visitor.ts';
import type { Visitor } from '../access/visitor.ts';
import type { PlayerView } from '../season/player.dto.ts';
import { Erasing } from './erasing.service.ts';

@ApiTags('packet')
@Controller('api/players')
export class ErasingController {
  constructor(@Inject(Erasing) private readonly erasing: Erasing) {}

  @Post(':id/erase')
  @HttpCode(200)
  @Needs('change students')
  async erase(@Param('id') id: string, @TheVisitor() visitor: Visitor): Promise<PlayerView> {
    return this.erasing.erase(id, visitor.roles);
  }
}
