import { Body, Controller, Get, HttpCode, Inject, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import { TheVisitor } from '../../access/visitor.ts';
import type { Visitor } from '../../access/visitor.ts';
import { IfMatch } from '../../platform/http/version.ts';
import { BoardChangesDto, MovePlacementDto } from './board.dto.ts';
import type { BoardChangesView, BoardReadView, BoardView } from './board.dto.ts';
import { BoardChanges } from './board-changes.service.ts';
import { BoardService } from './board.service.ts';

@ApiTags('planning')
@Controller('api')
export class BoardController {
  constructor(
    @Inject(BoardService) private readonly board: BoardService,
    @Inject(BoardChanges) private readonly changes: BoardChanges,
  ) {}

  @Get('seasons/:id/board')
  @Needs('see contracts')
  async of(@Param('id') id: string): Promise<BoardView> {
    return this.board.of(id);
  }

  @Post('seasons/:id/board-changes')
  @HttpCode(200)
  @Needs('plan placements')
  async change(@Param('id') id: string, @Body() form: BoardChangesDto, @TheVisitor() visitor: Visitor): Promise<BoardChangesView> {
    return this.changes.many(id, form, visitor.roles);
  }

  @Post('placements/:id/move')
  @HttpCode(200)
  @Needs('plan placements')
  async move(@Param('id') id: string, @IfMatch() version: number, @Body() form: MovePlacementDto, @TheVisitor() visitor: Visitor): Promise<BoardReadView> {
    const { overrideReason, ...to } = form;
    return this.changes.one({ kind: 'move', placementId: id, ...to }, version, overrideReason ?? null, visitor.roles);
  }

  @Post('placements/:id/pin')
  @HttpCode(200)
  @Needs('plan placements')
  async pin(@Param('id') id: string, @IfMatch() version: number, @TheVisitor() visitor: Visitor): Promise<BoardReadView> {
    return this.changes.one({ kind: 'pin', placementId: id }, version, null, visitor.roles);
  }

  @Post('placements/:id/unpin')
  @HttpCode(200)
  @Needs('plan placements')
  async unpin(@Param('id') id: string, @IfMatch() version: number, @TheVisitor() visitor: Visitor): Promise<BoardReadView> {
    return this.changes.one({ kind: 'unpin', placementId: id }, version, null, visitor.roles);
  }
}
