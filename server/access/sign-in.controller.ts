import { Body, Controller, Get, HttpCode, Inject, Post, Req, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { CONFIG } from '../platform/config/config.ts';
import type { Config } from '../platform/config/config.ts';
import { NOWHERE } from '../platform/database/scope.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { OutsideUnit } from '../platform/http/unit.interceptor.ts';
import { clearSessionCookie, linkCookies, setSessionCookie } from './cookie.ts';
import { Open } from '../platform/http/open.ts';
import { LinkService } from './link.service.ts';
import { Needs } from './needs.ts';
import { SessionService } from './session.service.ts';
import { ChangePasswordDto, ChooseDepartmentDto, SignInDto } from './sign-in.dto.ts';
import type { MeView } from './sign-in.dto.ts';
import { SignInService } from './sign-in.service.ts';
import { TheVisitor } from './visitor.ts';
import type { VisitedRequest, Visitor } from './visitor.ts';

@ApiTags('access')
@Controller('api')
@OutsideUnit()
export class SignInController {
  constructor(
    @Inject(SignInService) private readonly signIns: SignInService,
    @Inject(SessionService) private readonly sessions: SessionService,
    @Inject(LinkService) private readonly links: LinkService,
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  @Post('sign-in')
  @Open()
  @HttpCode(200)
  async signIn(@Body() form: SignInDto, @Req() request: VisitedRequest, @Res({ passthrough: true }) reply: FastifyReply): Promise<MeView> {
    const { token, me } = await this.signIns.signIn(form, request.ip);
    setSessionCookie(request, reply, this.config, token);
    return me;
  }

  @Get('me')
  @Needs('be here')
  async me(@TheVisitor() visitor: Visitor): Promise<MeView> {
    return this.signIns.me(visitor.personId, visitor.departmentId);
  }

  @Post('sign-out')
  @Needs('be here')
  @HttpCode(204)
  async signOut(@TheVisitor() visitor: Visitor, @Req() request: VisitedRequest, @Res({ passthrough: true }) reply: FastifyReply): Promise<void> {
    await this.work.runAs(NOWHERE, () => this.sessions.close(visitor.tokenHash));
    await this.links.revokeHeld(linkCookies(request, this.config), visitor.personId);
    clearSessionCookie(request, reply, this.config);
  }

  @Post('me/department')
  @Needs('be here')
  @HttpCode(200)
  async choose(
    @Body() form: ChooseDepartmentDto,
    @TheVisitor() visitor: Visitor,
    @Req() request: VisitedRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<MeView> {
    const { token, me } = await this.signIns.choose(visitor.personId, form.departmentId, visitor.tokenHash);
    setSessionCookie(request, reply, this.config, token);
    return me;
  }

  @Post('me/password')
  @Needs('be here')
  @HttpCode(204)
  async changePassword(
    @Body() form: ChangePasswordDto,
    @TheVisitor() visitor: Visitor,
    @Req() request: VisitedRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<void> {
    const token = await this.signIns.changePassword(visitor.personId, visitor.departmentId, form.current, form.next);
    setSessionCookie(request, reply, this.config, token);
  }
}
