import { Body, Controller, Get, Inject, Param, Patch, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/needs.ts';
import type { Listed } from '../platform/http/lists.ts';
import { IfMatch } from '../platform/http/version.ts';
import { ChangePayerDto, PayerDto, PayerListQuery } from './payer.dto.ts';
import type { PayerView } from './payer.dto.ts';
import { PayerService } from './payer.service.ts';

@ApiTags('sponsorship')
@Controller('api/payers')
export class PayerController {
  constructor(@Inject(PayerService) private readonly payers: PayerService) {}

  @Get()
  @Needs('see contracts')
  async list(@Query() query: PayerListQuery): Promise<Listed<PayerView>> {
    return this.payers.list(query);
  }

  @Get(':id')
  @Needs('see contracts')
  async one(@Param('id') id: string): Promise<PayerView> {
    return this.payers.one(id);
  }

  @Post()
  @Needs('change contracts')
  async add(@Body() form: PayerDto): Promise<PayerView> {
    return this.payers.add(form);
  }

  @Patch(':id')
  @Needs('change contracts')
  async change(@Param('id') id: string, @IfMatch() version: number, @Body() form: ChangePayerDto): Promise<PayerView> {
    return this.payers.change(id, version, form);
  }
}
