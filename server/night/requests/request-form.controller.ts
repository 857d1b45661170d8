import { Controller, Get, HttpCode, Inject, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import { RequestForms } from './request-form.service.ts';
import type { OpenedRequestFormView, RequestFormView } from './request.dto.ts';

@ApiTags('night')
@Controller('api/nights/:id/request-form')
export class RequestFormController {
  constructor(@Inject(RequestForms) private readonly forms: RequestForms) {}

  @Get()
  @Needs('give out links')
  async show(@Param('id') id: string): Promise<RequestFormView> {
    return this.forms.of(id);
  }

  @Post('open')
  @HttpCode(200)
  @Needs('give out links')
  async open(@Param('id') id: string): Promise<OpenedRequestFormView> {
    return this.forms.open(id);
  }

  @Post('close')
  @HttpCode(200)
  @Needs('give out links')
  async close(@Param('id') id: string): Promise<RequestFormView> {
    return this.forms.close(id);
  }

  @Post('new-code')
  @HttpCode(200)
  @Needs('give out links')
  async newCode(@Param('id') id: string): Promise<OpenedRequestFormView> {
    return this.forms.newCode(id);
  }
}
