import { Body, Controller, Get, Inject, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { MovesMoney } from '../../platform/http/unit.interceptor.ts';
import { MakegoodDto } from './makegood.dto.ts';
import type { MakegoodView } from './makegood.dto.ts';
import { MakegoodService } from './makegood.service.ts';

@ApiTags('sponsorship')
@Controller('api/contracts/:id/makegoods')
export class MakegoodController {
  constructor(@Inject(MakegoodService) private readonly makegoods: MakegoodService) {}

  @Get()
  @Needs('see contracts')
  async ofContract(@Param('id') id: string): Promise<Listed<MakegoodView>> {
    return this.makegoods.ofContract(id);
  }

  @Post()
  @MovesMoney()
  @Needs('change contracts')
  async agree(@Param('id') id: string, @Body() form: MakegoodDto): Promise<Listed<MakegoodView>> {
    await this.makegoods.agree(id, form);
    return this.makegoods.ofContract(id);
  }
}
