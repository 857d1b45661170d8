import { Controller, Get, Inject, Param, Post, Query, Res, StreamableFile } from '@nestjs/common';
import { ApiProduces, ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { Needs } from '../access/needs.ts';
import { TheVisitor } from '../access/visitor.ts';
import type { Visitor } from '../access/visitor.ts';
import type { Listed } from '../platform/http/lists.ts';
import { OutsideUnit } from '../platform/http/unit.interceptor.ts';
import { ChangeSetQuery, PdfQuery } from './packet.dto.ts';
import type { IssueView, NextIssueView, PacketView } from './packet.dto.ts';
import { PacketIssueService } from './packet-issue.service.ts';
import { PacketPrinter } from './packet-printer.service.ts';
import type { PrintedPacket } from './packet-printer.service.ts';

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
    return this.issuing.list(id);
  }

  @Get('next-issue')
  @OutsideUnit()
  @Needs('see packets')
  async next(@Param('id') id: string): Promise<NextIssueView> {
    return this.issuing.next(id);
  }

  @Post('packet-issues')
  @OutsideUnit()
  @Needs('issue packets')
  async issue(@Param('id') id: string): Promise<IssueView> {
    return this.issuing.issue(id);
  }

  @Get('packet.pdf')
  @OutsideUnit()
  @Needs('see packets')
  @ApiProduces('application/pdf')
  async pdf(@Param('id') id: string, @Query() query: PdfQuery, @TheVisitor() visitor: Visitor, @Res({ passthrough: true }) reply: FastifyReply): Promise<StreamableFile> {
    return sent(await this.printer.print(id, query.issue, visitor.roles), reply);
  }

  @Get('change-set.pdf')
  @OutsideUnit()
  @Needs('see packets')
  @ApiProduces('application/pdf')
  async changeSet(@Param('id') id: string, @Query() query: ChangeSetQuery, @TheVisitor() visitor: Visitor, @Res({ passthrough: true }) reply: FastifyReply): Promise<StreamableFile> {
    return sent(await this.printer.printChangeSet(id, query.issue, visitor.roles), reply);
  }
}

function sent({ pdf, fileName }: PrintedPacket, reply: FastifyReply): StreamableFile {
  void reply.header('cache-control', 'no-store');
  return new StreamableFile(pdf, { type: 'application/pdf', disposition: `inline; filename="${fileName}"`, length: pdf.length });
}
