import { Controller, Get, Inject, Param, Post, Query, Res, StreamableFile } from '@nestjs/common';
import { ApiProduces, ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { Needs } from '../access/needs.ts';
import type { Listed } from '../platform/http/lists.ts';
import { OutsideUnit } from '../platform/http/unit.interceptor.ts';
import { PdfQuery } from './packet.dto.ts';
import type { IssueView, PacketView } from './packet.dto.ts';
import { PacketPrinter } from './packet-printer.service.ts';
import { PacketIssueService } from './packet-issue.service.ts';

@ApiTags('packet')
@Controller('api/nights/:id')
export class PacketController {
  constructor(
    @Inject(PacketIssueService) private readonly issuing: PacketIssueService,
    @Inject(PacketPrinter) private readonly printer: PacketPrinter,
  ) {}

  @Get('packet')
  @Needs('see packets')
  async one(@Param('id') id: string): Promise<PacketView> {
    return this.issuing.one(id);
  }

  @Get('packet-issues')
  @Needs('see packets')
  async issues(@Param('id') id: string): Promise<Listed<IssueView>> {
    return this.issuing.issues(id);
  }

  @Post('packet-issues')
  @Needs('issue packets')
  async issue(@Param('id') id: string): Promise<IssueView> {
    return this.issuing.issue(id);
  }

  @Get('packet.pdf')
  @OutsideUnit()
  @Needs('see packets')
  @ApiProduces('application/pdf')
  async pdf(@Param('id') id: string, @Query() query: PdfQuery, @Res({ passthrough: true }) reply: FastifyReply): Promise<StreamableFile> {
    const { pdf, fileName } = await this.printer.print(id, query.issue);
    void reply.header('cache-control', 'no-store');
    return new StreamableFile(pdf, { type: 'application/pdf', disposition: `inline; filename="${fileName}"`, length: pdf.length });
  }
}
