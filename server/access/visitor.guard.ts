import { Inject, Injectable } from '@nestjs/common';
import type { CanActivate, ExecutionContext } from '@nestjs/common';
import { Reflector } from '@nestjs/core';
import { mayUseByLink } from '../domain/access/link-rights.ts';
import type { LinkRight } from '../domain/access/link-rights.ts';
import { mayUse } from '../domain/access/rights.ts';
import type { Right } from '../domain/access/rights.ts';
import { refuse } from '../domain/refusals.ts';
import type { RefusalCode } from '../domain/refusals.ts';
import { CONFIG } from '../platform/config/config.ts';
import type { Config } from '../platform/config/config.ts';
import { errands } from '../platform/database/scope.ts';
import { linkCookies, sessionToken } from './cookie.ts';
import { OPEN } from '../platform/http/open.ts';
import { LinkService } from './link.service.ts';
import { NEEDS, NEEDS_LINK, OR_LINK } from './needs.ts';
import { SessionService } from './session.service.ts';
import type { LinkVisitor, VisitedRequest } from './visitor.ts';

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
    const whyNot = await this.letInBySession(request, this.reflector.getAllAndOverride<Right | undefined>(NEEDS, targets));
    if (whyNot === null) return true;
    const orLink = this.reflector.getAllAndOverride<LinkRight | undefined>(OR_LINK, targets);
    return orLink === undefined ? refuse(whyNot) : this.letInToTable(request, orLink, whyNot);
  }

  private async letInBySession(request: VisitedRequest, right: Right | undefined): Promise<RefusalCode | null> {
    const token = sessionToken(request, this.config);
    if (!token) return 'not-signed-in';
    const visitor = await this.sessions.visitorOf(token);
    if (!visitor) return 'signed-out-by-now';
    if (right === undefined || !mayUse(visitor.roles, right)) return 'role-missing';
    request.visitor = visitor;
    const errand = errands.getStore();
    if (errand) errand.scope = { departmentId: visitor.departmentId, personId: visitor.personId };
    return null;
  }

  /** Whose session does not open the route may hold the link of that very night; the link of another one is worth as much as none. */
  private async letInToTable(request: VisitedRequest, right: LinkRight, whyNot: RefusalCode): Promise<boolean> {
    const nightId = (request.params as { id: string }).id.toLowerCase();
    const cookies = linkCookies(request, this.config);
    const isOfNight = (one: LinkVisitor): boolean => one.kind === 'table' && one.subjectId === nightId;
    // A good link behind one that has ended opens all the same.
    const visitor = (await this.links.visitorOf(cookies, (one) => isOfNight(one) && one.state === 'open')) ?? (await this.links.visitorOf(cookies, isOfNight));
    // Whoever has a session of their own can open the table anew; who was given a link is told what became of it.
    if (!visitor || (visitor.state !== 'open' && visitor.personId !== null)) return refuse(whyNot);
    if (visitor.state !== 'open') return refuse(visitor.state === 'revoked' ? 'table-link-revoked' : 'table-link-ended');
    if (!mayUseByLink(visitor, right)) return refuse(mayUseByLink(visitor, 'work the table') ? 'link-cannot-sign-off' : whyNot);
    enterByLink(request, visitor);
    return true;
  }

  /** A link opens its own routes and no others; a session opens none of these. */
  private async letInByLink(request: VisitedRequest, right: LinkRight): Promise<boolean> {
    const visitor = await this.links.visitorOf(linkCookies(request, this.config), (one) => one.state === 'open' && mayUseByLink(one, right));
    if (!visitor) return refuse('link-not-good');
    enterByLink(request, visitor);
    return true;
  }
}

function enterByLink(request: VisitedRequest, visitor: LinkVisitor): void {
  request.linkVisitor = visitor;
  const errand = errands.getStore();
  const table = visitor.kind === 'table' ? { linkId: visitor.linkId, nightId: visitor.subjectId } : null;
  if (errand) errand.scope = { departmentId: visitor.departmentId, personId: visitor.personId, table };
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
