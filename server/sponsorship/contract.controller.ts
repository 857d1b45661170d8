import { Body, Controller, Delete, Get, HttpCode, Inject, Param, Patch, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/needs.ts';
import type { Listed } from '../platform/http/lists.ts';
import { IfMatch } from '../platform/http/version.ts';
import { ContractViews } from './contract-view.service.ts';
import type { ContractView } from './contract-view.ts';
import { ChangeContractDto, ContractDto, ContractListQuery } from './contract.dto.ts';
import { ContractService } from './contract.service.ts';

@ApiTags('sponsorship')
@Controller('api/contracts')
export class ContractController {
  constructor(
    @Inject(ContractService) private readonly contracts: ContractService,
    @Inject(ContractViews) private readonly views: ContractViews,
  ) {}

  @Get()
  @Needs('see contracts')
  async list(@Query() query: ContractListQuery): Promise<Listed<ContractView>> {
    return this.views.list(query);
  }

  @Get(':id')
  @Needs('see contracts')
  async one(@Param('id') id: string): Promise<ContractView> {
    return this.views.one(id);
  }

  @Post()
  @Needs('change contracts')
  async add(@Body() form: ContractDto): Promise<ContractView> {
    return this.contracts.add(form);
  }

  @Patch(':id')
  @Needs('change contracts')
  async change(@Param('id') id: string, @IfMatch() version: number, @Body() form: ChangeContractDto): Promise<ContractView> {
    return this.contracts.change(id, version, form);
  }

  @Delete(':id')
  @HttpCode(204)
  @Needs('change contracts')
  async remove(@Param('id') id: string): Promise<void> {
    await this.contracts.remove(id);
  }
}
