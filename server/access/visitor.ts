import { createParamDecorator } from '@nestjs/common';
import type { ExecutionContext } from '@nestjs/common';
import type { FastifyRequest } from 'fastify';
import type { LinkKind, LinkState } from '../domain/access/link-rights.ts';
import type { Role } from '../domain/access/rights.ts';

/** Who sent the request, as the session says. */
export interface Visitor {
  personId: string;
  departmentId: string;
  roles: Role[];
  tokenHash: string;
}

/** Who came by a link: let in to one subject. */
export interface LinkVisitor {
  linkId: string;
  departmentId: string;
  kind: LinkKind;
  /** the sponsor, or the night */
  subjectId: string;
  /** whose own way to the table it is; null for a link that was given out */
  personId: string | null;
  /** that person's name, or for whom the link was given out */
  workerName: string;
  maySignOff: boolean;
  endsAt: string;
  state: LinkState;
}

export type VisitedRequest = FastifyRequest & { visitor?: Visitor; linkVisitor?: LinkVisitor };

export const TheVisitor = createParamDecorator((_: unknown, context: ExecutionContext): Visitor => {
  const visitor = context.switchToHttp().getRequest<VisitedRequest>().visitor;
  if (!visitor) throw new Error('this route asks for a visitor but is open to anyone');
  return visitor;
});

export const TheLinkVisitor = createParamDecorator((_: unknown, context: ExecutionContext): LinkVisitor => {
  const visitor = context.switchToHttp().getRequest<VisitedRequest>().linkVisitor;
  if (!visitor) throw new Error('this route asks for the bearer of a link but lets in others');
  return visitor;
});
