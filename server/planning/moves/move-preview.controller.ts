import { Body, Controller, HttpCode, Inject, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import { OutsideUnit } from '../../platform/http/unit.interceptor.ts';
import { MovePreviewDto } from './move-preview.dto.ts';
import type { MovePreview } from './move-preview.dto.ts';
import { MovePreviews } from './move-previews.service.ts';

@ApiTags('season')
@Controller('api/games/:id')
export class MovePreviewController {
  constructor(@Inject(MovePreviews) private readonly previews: MovePreviews) {}

  @Post('move-previews')
  @HttpCode(200)
  @OutsideUnit()
  @Needs('change the season')
  async preview(@Param('id') id: string, @Body() form: MovePreviewDto): Promise<MovePreview> {
    return this.previews.of(id, form);
  }
}
