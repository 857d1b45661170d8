import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../access/department.service.ts';
import type { DepartmentView } from '../access/department.dto.ts';
import type { Day } from '../domain/day.ts';
import type { NightForPacket } from '../domain/packet/night-for-packet.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { CopyShelves } from '../planning/copy-shelf.service.ts';
import type { CopyShelf } from '../planning/copy-shelf.ts';
import { SignedCommitments } from '../planning/signed-commitments.service.ts';
import type { SignedCommitment } from '../planning/signed-commitments.service.ts';
import { COMMITMENT_FACTS, HONOURS, ISSUED } from './night-fact-rows.ts';
import type { CommitmentFactsRow, HonouredRow, IssuedRow } from './night-fact-rows.ts';
import { nightForPacket } from './night-for-packet.ts';
import { GAMES, LATER_GAMES, NIGHTS, PEOPLE, PLACEMENTS, PLAYERS, TEAMS } from './night-rows.ts';
import type { GameRow, LaterGameRow, NightRow, PersonRow, PlacementRow, PlayerRow, TeamRow } from './night-rows.ts';

/** Everything the packets of some nights are made of. */
export interface NightFacts {
  department: DepartmentView;
  games: readonly GameRow[];
  teams: readonly TeamRow[];
  players: ReadonlyMap<string, readonly PlayerRow[]>;
  placements: readonly PlacementRow[];
  mentions: readonly SignedCommitment[];
  commitments: ReadonlyMap<string, CommitmentFactsRow>;
  honours: readonly HonouredRow[];
  issued: readonly IssuedRow[];
  shelf: CopyShelf;
  people: readonly PersonRow[];
  later: readonly LaterGameRow[];
}

/** Loads nights for their packets: a fixed number of statements, however many nights. */
@Injectable()
export class NightsForPackets {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(SignedCommitments) private readonly commitments: SignedCommitments,
    @Inject(CopyShelves) private readonly shelves: CopyShelves,
  ) {}

  async load(nightIds: readonly string[]): Promise<NightForPacket[]> {
    if (nightIds.length === 0) return [];
    const nights = await this.work.sql<NightRow>(NIGHTS, [nightIds]);
    if (nights.length === 0) return [];
    const facts = await this.factsOf(nights);
    return nights.map((night) => nightForPacket(night, facts));
  }

  private async factsOf(nights: readonly NightRow[]): Promise<NightFacts> {
    const ids = nights.map((night) => night.id);
    const department = await this.departments.here();
    const games = await this.work.sql<GameRow>(GAMES, [ids]);
    const teams = await this.work.sql<TeamRow>(TEAMS, [games.map((game) => game.id)]);
    const teamIds = [...new Set(teams.map((team) => team.teamId))];
    const players = await this.work.sql<PlayerRow>(PLAYERS, [teamIds]);
    const placements = await this.work.sql<PlacementRow>(PLACEMENTS, [ids]);
    const people = await this.work.sql<PersonRow>(PEOPLE, [ids]);
    const days = games.map((game) => game.movedFromOn ?? game.playedOn).sort();
    const mentions = days.length === 0 ? [] : await this.commitments.onOccurrence(days[0]!, days.at(-1)!);
    const commitmentIds = [...placements.map((one) => one.commitmentId), ...mentions.map((one) => one.id)];
    const commitments = await this.work.sql<CommitmentFactsRow>(COMMITMENT_FACTS, [[...new Set(commitmentIds)]]);
    const honours = await this.work.sql<HonouredRow>(HONOURS, [ids]);
    const issued = await this.work.sql<IssuedRow>(ISSUED, [ids]);
    const shelf = await this.shelves.of([...placements, ...mentions].map((one) => one.sponsorId), games.map((game) => game.id));
    const first = nights.map((night) => night.heldOn).sort()[0] as Day;
    const later = await this.work.sql<LaterGameRow>(LATER_GAMES, [teams.filter((team) => team.isOurs).map((team) => team.teamId), first]);
    return {
      department, games, teams, players: byTeam(players), placements, mentions, shelf, people, later, honours, issued,
      commitments: new Map(commitments.map((one) => [one.commitmentId, one])),
    };
  }
}

function byTeam(players: readonly PlayerRow[]): Map<string, PlayerRow[]> {
  const teams = new Map<string, PlayerRow[]>();
  for (const player of players) teams.set(player.teamId, [...(teams.get(player.teamId) ?? []), player]);
  return teams;
}
