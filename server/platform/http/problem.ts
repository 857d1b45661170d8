import { Catch, HttpException, Inject } from '@nestjs/common';
import type { ArgumentsHost, ExceptionFilter, ValidationError } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { REFUSALS, Refused, sentenceOfRefusal } from '../../domain/refusals.ts';
import type { RefusalCode, RefusalDetails } from '../../domain/refusals.ts';
import { LOG } from '../log/log.ts';
import type { Log } from '../log/log.ts';
import { refusedByDatabase } from './database-refusals.ts';

/** Messages nested in the form's shape; whole-form text stands under `root.serverError`. */
export type FormErrors = { [field: string]: string | FormErrors };

/** RFC 9457. `type` is the address of a readable page about the refusal. */
export interface Problem {
  type: string;
  title: string;
  status: number;
  detail: string;
  code: string;
  override: 'director' | 'never';
  errors: FormErrors;
  [extension: string]: unknown;
}

/** A body that does not have the fields' form. */
export class Malformed extends Error {
  constructor(readonly errors: FormErrors) {
    super('malformed');
  }
}

export function malformedBy(errors: readonly ValidationError[]): Malformed {
  return new Malformed(formErrors(errors));
}

function formErrors(errors: readonly ValidationError[]): FormErrors {
  const form: FormErrors = {};
  for (const error of errors) {
    const inner = error.children && error.children.length > 0 ? formErrors(error.children) : null;
    const [message] = Object.entries(error.constraints ?? {}).map(([rule, text]) =>
      rule === 'whitelistValidation' ? 'is not a field of this form' : text,
    );
    form[error.property] = inner && !message ? inner : (message ?? 'cannot be read');
  }
  return form;
}

export function problemOf(error: unknown): Problem {
  if (error instanceof Malformed) return problem('malformed', {}, error.errors);
  if (error instanceof Refused) return problem(error.code, error.details, (error.errors ?? {}) as FormErrors);
  const byDatabase = refusedByDatabase(error);
  if (byDatabase) return problem(byDatabase, {}, byDatabase === 'ends-before-it-starts' ? { endsOn: sentenceOfRefusal(byDatabase, {}) } : {});
  const status = error instanceof HttpException ? error.getStatus() : ((error as { statusCode?: number }).statusCode ?? 500);
  const code: RefusalCode =
    status === 404 ? 'not-found' : status === 413 ? 'too-large' : status === 415 || status === 400 ? 'malformed' : status === 429 ? 'too-many' : 'our-fault';
  return problem(code, {}, {});
}

function problem(code: RefusalCode, details: RefusalDetails, errors: FormErrors): Problem {
  const refusal = REFUSALS[code];
  const detail = sentenceOfRefusal(code, details);
  return {
    type: `/refusals/${code}`,
    title: code.replaceAll('-', ' '),
    status: refusal.status,
    detail,
    code,
    override: refusal.override,
    errors: { ...errors, root: { serverError: detail } },
    ...(Object.keys(details).length > 0 ? { details } : {}),
  };
}

@Catch()
export class ProblemFilter implements ExceptionFilter {
  constructor(@Inject(LOG) private readonly log: Log) {}

  catch(error: unknown, host: ArgumentsHost): void {
    const request = host.switchToHttp().getRequest<FastifyRequest>();
    const reply = host.switchToHttp().getResponse<FastifyReply>();
    const answer = problemOf(error);
    if (answer.status >= 500) {
      this.log.error({ request: request.id, error: String((error as Error)?.stack ?? error) }, 'a request failed');
    }
    const retryAfter = (answer['details'] as { retryAfterSeconds?: number } | undefined)?.retryAfterSeconds;
    if (retryAfter !== undefined) void reply.header('retry-after', String(retryAfter));
    void reply
      .status(answer.status)
      .header('content-type', 'application/problem+json; charset=utf-8')
      .header('cache-control', 'no-store')
      .send(JSON.stringify({ ...answer, instance: request.url.split('?')[0] }));
  }
}
