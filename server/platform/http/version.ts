import { createParamDecorator } from '@nestjs/common';
import type { ExecutionContext } from '@nestjs/common';
import type { FastifyRequest } from 'fastify';
import { refuse } from '../../domain/refusals.ts';

/**
 * The version a change was made from, out of `If-Match: "7"`.
 *
 * @throws Refused `version-missing` (428) without the header, `stale-version` (412) when it is no version of ours
 * @source RFC 9110 section 13.1.1 (strong comparison), RFC 6585 section 3
 */
export function versionOf(header: string | undefined): number {
  if (header === undefined || header === '') return refuse('version-missing');
  const match = /^"(\d{1,9})"$/.exec(header.trim());
  return match ? Number(match[1]) : refuse('stale-version');
}

export const IfMatch = createParamDecorator((_: unknown, context: ExecutionContext): number =>
  versionOf(context.switchToHttp().getRequest<FastifyRequest>().headers['if-match']),
);

/** The entity tag of a record: its version in quotes. */
export function tagOf(version: number): string {
  return `"${version}"`;
}
