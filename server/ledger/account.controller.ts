import { Body, Controller, Get, Inject, Param, Put } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/needs.ts';
import type { Listed } from '../platform/http/lists.ts';
import { IfMatch } from '../platform/http/version.ts';
import { AccountNames } from './account-names.service.ts';
import { AccountDto } from './account.dto.ts';
import type { AccountView } from './account.dto.ts';

@ApiTags('ledger')
@Controller('api/accounts')
export class AccountController {
  constructor(@Inject(AccountNames) private readonly accounts: AccountNames) {}

  @Get()
  @Needs('see money')
  async list(): Promise<Listed<AccountView>> {
    const data = await this.accounts.list();
    return { data, total: data.length };
  }

  @Get(':code')
  @Needs('see money')
  async one(@Param('code') code: string): Promise<AccountView> {
    return this.accounts.one(code);
  }

  @Put(':code')
  @Needs('export the journal')
  async name(@Param('code') code: string, @IfMatch() version: number, @Body() form: AccountDto): Promise<AccountView> {
    return this.accounts.name(code, version, form);
  }
}
