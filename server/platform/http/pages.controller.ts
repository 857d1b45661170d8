import { Controller, Get, Header, Param } from '@nestjs/common';
import { ApiExcludeController } from '@nestjs/swagger';
import { REFUSALS, isRefusalCode, refuse } from '../../domain/refusals.ts';
import { Open } from './open.ts';

/** A readable page about each "no": the address that problem+json carries as its type. */
@ApiExcludeController()
@Controller('refusals')
@Open()
export class RefusalPagesController {
  @Get(':code')
  @Header('content-type', 'text/html; charset=utf-8')
  page(@Param('code') code: string): string {
    if (!isRefusalCode(code)) return refuse('not-found');
    const refusal = REFUSALS[code];
    const way = refusal.override === 'director' ? 'A director can go past this, giving a reason.' : 'Nobody can go past this: a law or the books would break.';
    return `<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>${code} - Rafterline</title><main><h1>${code.replaceAll('-', ' ')}</h1><p>${refusal.sentence}</p><p>${way}</p><p>Status ${refusal.status}</p></main></html>`;
  }
}
