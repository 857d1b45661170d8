import { Body, Controller, Get, Inject, Param, Patch, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/needs.ts';
import type { Listed } from '../platform/http/lists.ts';
import { IfMatch } from '../platform/http/version.ts';
import { ChangeSellerDto, SellerDto, SellerListQuery } from './seller.dto.ts';
import type { SellerView } from './seller.dto.ts';
import { SellerService } from './seller.service.ts';

@ApiTags('sponsorship')
@Controller('api/sellers')
export class SellerController {
  constructor(@Inject(SellerService) private readonly sellers: SellerService) {}

  @Get()
  @Needs('see contracts')
  async list(@Query() query: SellerListQuery): Promise<Listed<SellerView>> {
    return this.sellers.list(query);
  }

  @Get(':id')
  @Needs('see contracts')
  async one(@Param('id') id: string): Promise<SellerView> {
    return this.sellers.one(id);
  }

  @Post()
  @Needs('change contracts')
  async add(@Body() form: SellerDto): Promise<SellerView> {
    return this.sellers.add(form);
  }

  @Patch(':id')
  @Needs('change contracts')
  async change(@Param('id') id: string, @IfMatch() version: number, @Body() form: ChangeSellerDto): Promise<SellerView> {
    return this.sellers.change(id, version, form);
  }
}
