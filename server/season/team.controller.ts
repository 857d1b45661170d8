import { Body, Controller, Get, Inject, Param, Patch, Post, Put, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/needs.ts';
import { TheVisitor } from '../access/visitor.ts';
import type { Visitor } from '../access/visitor.ts';
import type { Listed } from '../platform/http/lists.ts';
import { IfMatch } from '../platform/http/version.ts';
import { ChangeTeamDto, RosterDto, TeamDto, TeamListQuery } from './team.dto.ts';
import type { TeamView } from './team.dto.ts';
import { TeamService } from './team.service.ts';

@ApiTags('season')
@Controller('api/teams')
export class TeamController {
  constructor(@Inject(TeamService) private readonly teams: TeamService) {}

  @Get()
  @Needs('see the season')
  async list(@Query() query: TeamListQuery): Promise<Listed<TeamView>> {
    return this.teams.list(query);
  }

  @Get(':id')
  @Needs('see the season')
  async one(@Param('id') id: string, @TheVisitor() visitor: Visitor): Promise<TeamView> {
    return this.teams.one(id, visitor.roles);
  }

  @Post()
  @Needs('change the season')
  async add(@Body() form: TeamDto, @TheVisitor() visitor: Visitor): Promise<TeamView> {
    return this.teams.add(form, visitor.roles);
  }

  @Patch(':id')
  @Needs('change the season')
  async change(
    @Param('id') id: string,
    @IfMatch() version: number,
    @Body() form: ChangeTeamDto,
    @TheVisitor() visitor: Visitor,
  ): Promise<TeamView> {
    return this.teams.change(id, version, form, visitor.roles);
  }

  @Put(':id/roster')
  @Needs('change students')
  async putRoster(
    @Param('id') id: string,
    @IfMatch() version: number,
    @Body() form: RosterDto,
    @TheVisitor() visitor: Visitor,
  ): Promise<TeamView> {
    return this.teams.putRoster(id, version, form, visitor.roles);
  }
}
