import { Inject, Injectable } from '@nestjs/common';
import type { CanActivate, ExecutionContext } from '@nestjs/common';
import { Reflector } from '@nestjs/core';
import { mayUseByLink } from '../domain/access/link-rights.ts';
import type { LinkRight } from '../domain/access/link-rights.ts';
import { mayUse } from '../domain/access/rights.ts';
import type { Right } from '../domain/access/rights.ts';
import { refuse } from '../domain/refusals.ts';
import { CONFIG } from '../platform/config/config.ts';
import type { Config } from '../platform/config/config.ts';
import { errands } from '../platform/database/scope.ts';
import { linkCookie, sessionToken } from './cookie.ts';
import { OPEN } from '../platform/http/open.ts';
import { LinkService } from './link.service.ts';
import { NEEDS, NEEDS_LINK } from './needs.ts';
import { SessionService } from './session.service.ts';
import type { VisitedRequest } from './visitor.ts';

const SAFE = new Set(['GET', 'HEAD', 'OPTIONS']);

/** Who is it, may they, and did the request come from our own pages. Nothing is allowed that is not said to be. */
@Injectable()
export class VisitorGuard implements CanActivate {
  constructor(
    @Inject(SessionService) private readonly sessions: SessionService,
    @Inject(LinkService) private readonly links: LinkService,
    @Inject(Reflector) private readonly reflector: Reflector,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  async canActivate(context: ExecutionContext): Promise<boolean> {
    const request = context.switchToHttp().getRequest<VisitedRequest>();
    refuseOtherSites(request);
    const targets = [context.getHandler(), context.getClass()];
    if (this.reflector.getAllAndOverride<boolean>(OPEN, targets)) return true;
    const linkRight = this.reflector.getAllAndOverride<LinkRight | undefined>(NEEDS_LINK, targets);
    if (linkRight !== undefined) return this.letInByLink(request, linkRight);
    const token = sessionToken(request, this.config);
    if (!token) refuse('not-signed-in');
    const visitor = await this.sessions.visitorOf(token);
    if (!visitor) refuse('signed-out-by-now');
    const right = this.reflector.getAllAndOverride<Right | undefined>(NEEDS, targets);
    if (right === undefined || !mayUse(visitor.roles, right)) refuse('role-missing');
    request.visitor = visitor;
    const errand = errands.getStore();
    if (errand) errand.scope = { departmentId: visitor.departmentId, personId: visitor.personId };
    return true;
  }

  /** A link opens its own routes and no others; a session opens none of these. */
  private async letInByLink(request: VisitedRequest, right: LinkRight): Promise<boolean> {
    const cookie = linkCookie(request, this.config);
    const visitor = cookie ? await this.links.visitorOf(cookie) : null;
    if (!visitor || !mayUseByLink(visitor.kind, right)) return refuse('link-not-good');
    request.linkVisitor = visitor;
    const errand = errands.getStore();
    if (errand) errand.scope = { departmentId: visitor.departmentId, personId: null };
    return true;
  }
}

function refuseOtherSites(request: VisitedRequest): void {
  if (SAFE.has(request.method)) return;
  const site = request.headers['sec-fetch-site'];
  if (site !== undefined && site !== 'same-origin' && site !== 'none') refuse('other-site');
  const origin = request.headers.origin;
  if (origin !== undefined && !isOurOrigin(origin, request.host)) refuse('other-site');
  if (request.headers['x-rafterline'] === undefined) refuse('other-site');
}

function isOurOrigin(origin: string, host: string): boolean {
  return URL.canParse(origin) && new URL(origin).host === host;
}
