import { Body, Controller, Delete, Get, HttpCode, Inject, Param, Patch, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/needs.ts';
import type { Listed } from '../platform/http/lists.ts';
import { IfMatch } from '../platform/http/version.ts';
import { ChangeWindowPlacesDto, WindowPlacesDto, WindowPlacesListQuery } from './window-places.dto.ts';
import type { WindowPlacesView } from './window-places.dto.ts';
import { WindowPlacesService } from './window-places.service.ts';

@ApiTags('season')
@Controller('api/window-places')
export class WindowPlacesController {
  constructor(@Inject(WindowPlacesService) private readonly places: WindowPlacesService) {}

  @Get()
  @Needs('see the season')
  async list(@Query() query: WindowPlacesListQuery): Promise<Listed<WindowPlacesView>> {
    return this.places.list(query);
  }

  @Post()
  @Needs('change the season')
  async add(@Body() form: WindowPlacesDto): Promise<WindowPlacesView> {
    return this.places.add(form);
  }

  @Patch(':id')
  @Needs('change the season')
  async change(@Param('id') id: string, @IfMatch() version: number, @Body() form: ChangeWindowPlacesDto): Promise<WindowPlacesView> {
    return this.places.change(id, version, form);
  }

  @Delete(':id')
  @HttpCode(204)
  @Needs('change the season')
  async remove(@Param('id') id: string): Promise<void> {
    await this.places.remove(id);
  }
}
