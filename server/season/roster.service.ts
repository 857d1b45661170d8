import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../access/department.service.ts';
import { refuse, sentenceOfRefusal } from '../domain/refusals.ts';
import { foldedText } from '../domain/season/import-headings.ts';
import { numberWarnings } from '../domain/season/legal-numbers.ts';
import type { NumberRule } from '../domain/season/legal-numbers.ts';
import { playersCalled, playersInWords } from '../domain/season/players-called.ts';
import { nameToPrint, nameToSay, stricterChoice } from '../domain/season/player-name.ts';
import { profileFor, schoolYearOf } from '../domain/season/sport-profile.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import type { Player } from './player.entity.ts';
import { LAST_SEEN } from './players-there.service.ts';
import { RosterWriter } from './roster-writer.service.ts';
import type { LineToWrite } from './roster-writer.service.ts';
import { Season } from './season.entity.ts';
import type { RosterLine, RosterPlayerDto } from './team.dto.ts';
import type { Team } from './team.entity.ts';

const LINES = `select roster_entry.id, roster_entry.player_id as "playerId", roster_entry.number, player.name, player.say_as as "sayAs",
    player.announce, roster_entry.position, roster_entry.grade, roster_entry.is_starter as "isStarter", roster_entry.team_id as "teamId"
  from roster_entry join player on player.department_id = roster_entry.department_id and player.id = roster_entry.player_id
  where roster_entry.department_id = $1 and roster_entry.team_id = any($2::uuid[])
  order by length(ltrim(roster_entry.number, '0')), roster_entry.number::int, length(roster_entry.number)`;

type KnownPlayer = Pick<Player, 'id' | 'name' | 'sayAs' | 'announce' | 'erasedAt'> & { lastSeen: string | null };

export type RosterLineThere = RosterLine & { teamId: string };

@Injectable()
export class RosterService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(RosterWriter) private readonly writer: RosterWriter,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  async of(team: Team, showsSilent: boolean): Promise<{ roster: RosterLine[]; warnings: { code: string; sentence: string }[] }> {
    const lines = await this.lines([team.id]);
    const warnings = numberWarnings(await this.numberRule(team.seasonId), lines.map((line) => line.number));
    return {
      roster: lines.map((line) => lineView(showsSilent ? line : withoutSilent(line))),
      warnings: warnings.map(({ code, sentence }) => ({ code, sentence })),
    };
  }

  async lines(teamIds: readonly string[]): Promise<RosterLineThere[]> {
    return this.work.sql<RosterLineThere>(LINES, [teamIds]);
  }

  async numberRule(seasonId: string): Promise<NumberRule> {
    const season = await this.work.one(Season, seasonId);
    const { settings } = await this.departments.here();
    return profileFor(season.sport, schoolYearOf(season.startsOn), settings.state).numberRule;
  }

  /** Erased ones too: they are known by their line. */
  private async known(schoolId: string): Promise<KnownPlayer[]> {
    return this.work.sql<KnownPlayer>(
      `select player.id, player.name, player.say_as as "sayAs", player.announce, player.erased_at as "erasedAt", ${LAST_SEEN} as "lastSeen"
         from player where player.department_id = $1 and player.school_id = $2 order by player.id`,
      [schoolId],
    );
  }

  /** The whole list at once: who is not named leaves it. */
  async put(team: Team, players: readonly RosterPlayerDto[]): Promise<void> {
    refuseDoubles(players);
    const lines = await this.lines([team.id]);
    const known = await this.known(team.schoolId);
    const wanted = players.map((player, place) => lineOf(player, { team, lines, known, place }));
    const kept = new Set(wanted.map((line) => line.id));
    await this.writer.write(lines.filter((line) => !kept.has(line.id)).map((line) => line.id), wanted);
  }
}

interface Written {
  team: Team;
  lines: readonly RosterLineThere[];
  known: readonly KnownPlayer[];
  /** of the line in the form */
  place: number;
}

/** Somebody who may not change students reads a name as the family allows it to be announced. */
export function withoutSilent<Line extends { name: string; number?: string; sayAs: string | null; announce: RosterLine['announce'] }>(line: Line): Line {
  const named = { ...line, number: line.number ?? '' };
  return {
    ...line,
    name: nameToPrint(named) ?? 'Not announced',
    sayAs: line.announce === 'name' && line.sayAs ? nameToSay(named) : null,
  };
}

function lineView(line: RosterLineThere): RosterLine {
  const { teamId: _, ...view } = line;
  return view;
}

function refuseDoubles(players: readonly RosterPlayerDto[]): void {
  const seen = new Set<string>();
  players.forEach((player, place) => {
    if (seen.has(player.number)) refuse('number-taken', {}, { players: { [place]: { number: 'is worn by another player of this list' } } });
    seen.add(player.number);
  });
}

/**
 * A player is found by the line, by id, or by name among the school's; the choice of a family is loosened on a line that is there already, never by adding one.
 *
 * @throws Refused `player-name-twice` where two fit, `unknown-player`
 */
function lineOf(form: RosterPlayerDto, written: Written): LineToWrite {
  const { team, lines, known } = written;
  const name = foldedText(form.name);
  const byId = form.id ? (lines.find((line) => line.id === form.id) ?? refuse('unknown-player')) : undefined;
  const called = form.isNew ? [] : lines.filter((one) => (form.playerId ? one.playerId === form.playerId : foldedText(one.name) === name));
  // Of two with one name on this list, the number says which.
  const line = byId ?? (called.length < 2 ? called[0] : called.find((one) => one.number === form.number));
  const named = form.playerId ?? line?.playerId;
  const player = named ? known.find((one) => one.id === named) : form.isNew ? undefined : onlyOneCalled(form.name, written);
  if (named && !player) refuse('unknown-player');
  const isNamed = byId !== undefined || form.playerId !== undefined;
  const announce = form.announce ?? player?.announce ?? 'name';
  return {
    id: line?.id ?? null,
    playerId: player?.id ?? null,
    teamId: team.id,
    schoolId: team.schoolId,
    number: form.number,
    name: form.name,
    sayAs: isNamed && form.sayAs !== undefined ? form.sayAs : (form.sayAs ?? player?.sayAs ?? null),
    // A line that is new to this list comes with the choice a form begins with, not with one the family made.
    announce: byId || !player ? announce : stricterChoice(player.announce, announce),
    position: form.position === undefined ? (line?.position ?? null) : form.position,
    grade: form.grade === undefined ? (line?.grade ?? null) : form.grade,
    isStarter: form.isStarter ?? line?.isStarter ?? false,
  };
}

/** Of two with one name nobody is picked by chance: one may be the student whose family chose silence. */
function onlyOneCalled(name: string, { known, place }: Written): KnownPlayer | undefined {
  const fitting = playersCalled(name, known.filter((one) => one.erasedAt === null));
  if (fitting.length < 2) return fitting[0];
  const details = { name, who: playersInWords(fitting) };
  return refuse('player-name-twice', details, { players: { [place]: { name: sentenceOfRefusal('player-name-twice', details) } } });
}
