import { createHash } from 'node:crypto';
import { Inject, Injectable, SetMetadata } from '@nestjs/common';
import type { CallHandler, ExecutionContext, NestInterceptor } from '@nestjs/common';
import { Reflector } from '@nestjs/core';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { from, lastValueFrom } from 'rxjs';
import type { Observable } from 'rxjs';
import { errands } from '../database/scope.ts';
import { UnitOfWork } from '../database/unit-of-work.ts';
import { IdempotencyService } from './idempotency.service.ts';
import { tagOf } from './version.ts';

const OUTSIDE = 'outside-a-unit';
const MONEY = 'moves-money';

/** The route opens short units itself: sign-in, streams, PDFs, long work. */
export const OutsideUnit = () => SetMetadata(OUTSIDE, true);

/** The route needs an `Idempotency-Key`: sent twice, it happens once and answers the same. */
export const MovesMoney = () => SetMetadata(MONEY, true);

/** A JSON route is one unit of work, committed before the first byte of the answer. */
@Injectable()
export class UnitInterceptor implements NestInterceptor {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(IdempotencyService) private readonly idempotency: IdempotencyService,
    @Inject(Reflector) private readonly reflector: Reflector,
  ) {}

  intercept(context: ExecutionContext, next: CallHandler): Observable<unknown> {
    if (context.getType() !== 'http' || this.isOutside(context)) return next.handle();
    return from(this.inUnit(context, next));
  }

  private async inUnit(context: ExecutionContext, next: CallHandler): Promise<unknown> {
    const request = context.switchToHttp().getRequest<FastifyRequest>();
    const reply = context.switchToHttp().getResponse<FastifyReply>();
    const handle = async (): Promise<unknown> => lastValueFrom(next.handle(), { defaultValue: undefined });
    const body = await this.work.run(async () => {
      if (!this.reflector.get<boolean>(MONEY, context.getHandler())) return handle();
      return this.idempotency.once(
        {
          key: request.headers['idempotency-key'] as string | undefined,
          route: `${request.method} ${request.url.split('?')[0]}`,
          payloadDigest: createHash('sha256').update(JSON.stringify(request.body ?? null)).digest('hex'),
          status: reply.statusCode,
        },
        handle,
        (status) => void reply.status(status).header('idempotency-replayed', 'true'),
      );
    });
    const version = (body as { version?: unknown } | undefined)?.version;
    if (typeof version === 'number') void reply.header('etag', tagOf(version));
    return body;
  }

  private isOutside(context: ExecutionContext): boolean {
    const marked = this.reflector.getAllAndOverride<boolean>(OUTSIDE, [context.getHandler(), context.getClass()]);
    return marked === true || !errands.getStore()?.scope;
  }
}
