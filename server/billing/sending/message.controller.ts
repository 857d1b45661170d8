import { Body, Controller, Get, HttpCode, Inject, Param, Post, Query, StreamableFile } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { MovesMoney, OutsideUnit } from '../../platform/http/unit.interceptor.ts';
import { AttachmentPrinting } from './attachment-printing.service.ts';
import { BouncedDto, LetterDto, MessageListQuery, SendLetterDto } from './message.dto.ts';
import type { LetterPreview, MessageView, WholeMessageView } from './message.dto.ts';
import { MessageViews } from './message-view.service.ts';
import { MessageService } from './message.service.ts';

@ApiTags('letters')
@Controller('api/messages')
export class MessageController {
  constructor(
    @Inject(MessageViews) private readonly views: MessageViews,
    @Inject(MessageService) private readonly messages: MessageService,
    @Inject(AttachmentPrinting) private readonly printing: AttachmentPrinting,
  ) {}

  @Get()
  @Needs('see money')
  async list(@Query() query: MessageListQuery): Promise<Listed<MessageView>> {
    return this.views.list(query);
  }

  @Get(':id')
  @Needs('see money')
  async one(@Param('id') id: string): Promise<WholeMessageView> {
    return this.views.one(id);
  }

  @Post('preview')
  @HttpCode(200)
  @Needs('send letters')
  async preview(@Body() form: LetterDto): Promise<LetterPreview> {
    return this.messages.preview(form);
  }

  @Post()
  @MovesMoney()
  @Needs('send letters')
  async send(@Body() form: SendLetterDto): Promise<WholeMessageView> {
    return this.views.one(await this.messages.send(form));
  }

  @Post(':id/bounced')
  @HttpCode(200)
  @Needs('send letters')
  async bounced(@Param('id') id: string, @Body() form: BouncedDto): Promise<WholeMessageView> {
    await this.messages.bounced(id, form);
    return this.views.one(id);
  }

  @Get(':id/attachment.pdf')
  @OutsideUnit()
  @Needs('see money')
  async attachment(@Param('id') id: string): Promise<StreamableFile> {
    const { bytes, name } = await this.printing.first(id);
    return new StreamableFile(bytes, { type: 'application/pdf', disposition: `inline; filename="${name}"`, length: bytes.length });
  }
}
