import { Body, Controller, Get, HttpCode, Inject, Post, Query, Req, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { addLinkCookie, linkCookies } from '../../access/cookie.ts';
import { Needs, NeedsLink } from '../../access/needs.ts';
import { TheVisitor } from '../../access/visitor.ts';
import type { VisitedRequest, Visitor } from '../../access/visitor.ts';
import { CONFIG } from '../../platform/config/config.ts';
import type { Config } from '../../platform/config/config.ts';
import { OutsideUnit } from '../../platform/http/unit.interceptor.ts';
import { TableLinks } from './table-link.service.ts';
import { OpenTableDto, TableQuery } from './table.dto.ts';
import type { TableView } from './table.dto.ts';

@ApiTags('night')
@Controller('api/table')
@OutsideUnit()
export class TableController {
  constructor(
    @Inject(TableLinks) private readonly tables: TableLinks,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  @Get()
  @NeedsLink('work the table')
  async show(@Query() query: TableQuery, @Req() request: VisitedRequest): Promise<TableView> {
    return this.tables.tableOf(linkCookies(request, this.config), query.nightId);
  }

  @Post('open')
  @HttpCode(200)
  @Needs('log a night')
  async open(@Body() form: OpenTableDto, @TheVisitor() visitor: Visitor, @Req() request: VisitedRequest, @Res({ passthrough: true }) reply: FastifyReply): Promise<TableView> {
    const { cookie, table } = await this.tables.openFor(visitor, form.nightId, linkCookies(request, this.config));
    addLinkCookie(request, reply, this.config, cookie, new Date(table.endsAt));
    return table;
  }
}
