import { Body, Controller, Get, Inject, Param, Patch, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/needs.ts';
import type { Listed } from '../platform/http/lists.ts';
import { IfMatch } from '../platform/http/version.ts';
import { ChangeReadKindDto, ReadKindDto, ReadKindListQuery } from './read-kind.dto.ts';
import type { ReadKindView } from './read-kind.dto.ts';
import { ReadKindService } from './read-kind.service.ts';

@ApiTags('sponsorship')
@Controller('api/read-kinds')
export class ReadKindController {
  constructor(@Inject(ReadKindService) private readonly kinds: ReadKindService) {}

  @Get()
  @Needs('see copy')
  async list(@Query() query: ReadKindListQuery): Promise<Listed<ReadKindView>> {
    return this.kinds.list(query);
  }

  @Get(':id')
  @Needs('see copy')
  async one(@Param('id') id: string): Promise<ReadKindView> {
    return this.kinds.one(id);
  }

  @Post()
  @Needs('change contracts')
  async add(@Body() form: ReadKindDto): Promise<ReadKindView> {
    return this.kinds.add(form);
  }

  @Patch(':id')
  @Needs('change contracts')
  async change(@Param('id') id: string, @IfMatch() version: number, @Body() form: ChangeReadKindDto): Promise<ReadKindView> {
    return this.kinds.change(id, version, form);
  }
}
