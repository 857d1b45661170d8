import { Body, Controller, Get, HttpCode, Inject, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { LinkView } from '../../access/link.dto.ts';
import { Needs } from '../../access/needs.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { TableLinks } from './table-link.service.ts';
import { TableLinkDto } from './table.dto.ts';
import type { NewTableLinkView } from './table.dto.ts';

@ApiTags('night')
@Controller('api/nights/:id/table-links')
export class TableLinkController {
  constructor(@Inject(TableLinks) private readonly tables: TableLinks) {}

  @Get()
  @Needs('give out links')
  async list(@Param('id') id: string): Promise<Listed<LinkView>> {
    const data = await this.tables.of(id);
    return { data, total: data.length };
  }

  @Post()
  @Needs('give out links')
  async make(@Param('id') id: string, @Body() form: TableLinkDto): Promise<NewTableLinkView> {
    return this.tables.giveOut(id, form);
  }

  @Post(':linkId/revoke')
  @HttpCode(200)
  @Needs('give out links')
  async revoke(@Param('id') id: string, @Param('linkId') linkId: string): Promise<LinkView> {
    return this.tables.revoke(id, linkId);
  }
}
