import { createParamDecorator } from '@nestjs/common';
import type { ExecutionContext } from '@nestjs/common';
import type { FastifyRequest } from 'fastify';
import type { Role } from '../domain/access/rights.ts';

/** Who sent the request, as the session says. */
export interface Visitor {
  personId: string;
  departmentId: string;
  roles: Role[];
  tokenHash: string;
}

export type VisitedRequest = FastifyRequest & { visitor?: Visitor };

export const TheVisitor = createParamDecorator((_: unknown, context: ExecutionContext): Visitor => {
  const visitor = context.switchToHttp().getRequest<VisitedRequest>().visitor;
  if (!visitor) throw new Error('this route asks for a visitor but is open to anyone');
  return visitor;
});
