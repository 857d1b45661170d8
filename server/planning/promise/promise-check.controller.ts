import { Body, Controller, HttpCode, Inject, Param, Post, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { Needs } from '../../access/needs.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { OutsideUnit } from '../../platform/http/unit.interceptor.ts';
import { AskedDeals } from './asked-deals.service.ts';
import { untilGone } from './client-gone.ts';
import { PromiseCheckDto } from './promise-check.dto.ts';
import type { PromiseCheckView } from './promise-check.dto.ts';
import { PromiseChecks } from './promise-checks.service.ts';
import type { Asked } from './promise-checks.service.ts';

@ApiTags('planning')
@Controller('api')
@OutsideUnit()
export class PromiseCheckController {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(AskedDeals) private readonly deals: AskedDeals,
    @Inject(PromiseChecks) private readonly checks: PromiseChecks,
  ) {}

  @Post('plan/promise-checks')
  @HttpCode(200)
  @Needs('see contracts')
  async ofForm(@Body() form: PromiseCheckDto, @Res({ passthrough: true }) reply: FastifyReply): Promise<PromiseCheckView> {
    return this.check(reply, () => this.deals.ofForm(form));
  }

  @Post('offers/:id/promise-checks')
  @HttpCode(200)
  @Needs('see contracts')
  async ofOffer(@Param('id') id: string, @Res({ passthrough: true }) reply: FastifyReply): Promise<PromiseCheckView> {
    return this.check(reply, () => this.deals.ofOffer(id));
  }

  @Post('contracts/:id/promise-checks')
  @HttpCode(200)
  @Needs('see contracts')
  async ofContract(@Param('id') id: string, @Res({ passthrough: true }) reply: FastifyReply): Promise<PromiseCheckView> {
    return this.check(reply, () => this.deals.ofContract(id));
  }

  private async check(reply: FastifyReply, asked: () => Promise<Asked>): Promise<PromiseCheckView> {
    const prepared = await this.work.run(async () => this.checks.prepare(await asked()));
    return (await this.checks.answer(prepared, untilGone(reply))).view;
  }
}
