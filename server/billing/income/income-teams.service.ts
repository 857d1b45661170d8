import { Inject, Injectable } from '@nestjs/common';
import { teamsEarning } from '../../domain/billing/income-split.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';

interface EventRow {
  id: string;
  contractId: string | null;
  nightId: string | null;
  readId: string | null;
  gameId: string | null;
  lineId: string | null;
}

interface EntryRow {
  id: string;
  gameId: string | null;
  commitmentId: string | null;
}

const EVENTS = `select id, contract_id as "contractId", case when cause = 'night' then cause_id end as "nightId",
    happening ->> 'readId' as "readId", happening ->> 'gameId' as "gameId", happening ->> 'lineId' as "lineId"
  from ledger_event where department_id = $1 and id = any($2::uuid[])`;

const ENTRIES = `select id, game_id as "gameId", commitment_id as "commitmentId" from log_entry where department_id = $1 and id = any($2::uuid[])`;

/** Our teams of games, and of all games of a night under the night's id. */
const GAME_TEAMS = `select game.key, participant.team_id as "teamId" from (
    select game_id as key, game_id, 0 as place from game_participant where department_id = $1 and game_id = any($2::uuid[])
    union select night_id, game_id, place from game_night where department_id = $1 and night_id = any($2::uuid[])) as game
  join game_participant as participant on participant.department_id = $1 and participant.game_id = game.game_id
  join team on team.department_id = $1 and team.id = participant.team_id
  join school on school.department_id = $1 and school.id = team.school_id
  where school.is_ours order by game.place, participant.place`;

const LINE_TEAMS = `select id, contract_id as "contractId", team_ids as "teamIds" from commitment
  where department_id = $1 and (id = any($2::uuid[]) or contract_id = any($3::uuid[])) order by place`;

/** Says of events that earned or gave up revenue whose teams' income that is. */
@Injectable()
export class IncomeTeams {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /**
   * Ids of our teams by the event's id, for `splitIncome`; an empty list is the department as a whole. It rests on the log,
   * which only grows, so that an event's split stays what it was.
   */
  async ofEvents(eventIds: readonly string[]): Promise<Map<string, string[]>> {
    const events = await this.work.sql<EventRow>(EVENTS, [[...new Set(eventIds)]]);
    const entries = await this.entries(events);
    const games = await this.gameTeams(events, entries);
    const { ofLine, ofContract } = await this.lineTeams(events, entries);
    return new Map(
      events.map((event) => {
        const entry = event.readId === null ? undefined : entries.get(event.readId);
        const places = [entry?.gameId, event.gameId, event.readId === null ? null : event.nightId];
        const lineId = event.lineId ?? entry?.commitmentId ?? '';
        const teams = teamsEarning({
          gameTeamIds: places.map((place) => games.get(place ?? '') ?? []).find((teamIds) => teamIds.length > 0) ?? [],
          lineTeamIds: ofLine.get(lineId) ?? [],
          contractTeamIds: ofContract.get(event.contractId ?? '') ?? [],
        });
        return [event.id, teams];
      }),
    );
  }

  private async entries(events: readonly EventRow[]): Promise<Map<string, EntryRow>> {
    const ids = events.flatMap(({ readId }) => (readId !== null && isId(readId) ? [readId] : []));
    const rows = ids.length === 0 ? [] : await this.work.sql<EntryRow>(ENTRIES, [ids]);
    return new Map(rows.map((row) => [row.id, row]));
  }

  private async gameTeams(events: readonly EventRow[], entries: ReadonlyMap<string, EntryRow>): Promise<Map<string, string[]>> {
    const keys = new Set([...events.flatMap(({ gameId, nightId }) => [gameId, nightId]), ...[...entries.values()].map((entry) => entry.gameId)]);
    const ids = [...keys].filter((key): key is string => key !== null && isId(key));
    const rows = ids.length === 0 ? [] : await this.work.sql<{ key: string; teamId: string }>(GAME_TEAMS, [ids]);
    const teams = new Map<string, string[]>();
    for (const { key, teamId } of rows) teams.set(key, [...(teams.get(key) ?? []), teamId]);
    return teams;
  }

  private async lineTeams(events: readonly EventRow[], entries: ReadonlyMap<string, EntryRow>) {
    const lines = [...events.map((event) => event.lineId), ...[...entries.values()].map((entry) => entry.commitmentId)];
    const contracts = events.map((event) => event.contractId);
    const known = (ids: readonly (string | null)[]) => [...new Set(ids)].filter((id): id is string => id !== null && isId(id));
    const rows = await this.work.sql<{ id: string; contractId: string; teamIds: string[] }>(LINE_TEAMS, [known(lines), known(contracts)]);
    const ofContract = new Map<string, string[]>();
    for (const { contractId, teamIds } of rows) ofContract.set(contractId, [...(ofContract.get(contractId) ?? []), ...teamIds]);
    return { ofLine: new Map(rows.map((row) => [row.id, row.teamIds])), ofContract };
  }
}
