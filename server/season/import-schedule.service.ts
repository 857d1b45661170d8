import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../domain/refusals.ts';
import type { ImportPlan, ImportStep } from '../domain/season/import-plan.ts';
import { planScheduleImport } from '../domain/season/import-schedule.ts';
import type { GameThere, WantedGame } from '../domain/season/import-schedule.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { readCsv } from './csv.ts';
import { GameChange } from './game-change.service.ts';
import { GameReader } from './game-reader.service.ts';
import { GameService } from './game.service.ts';
import type { GameView } from './game.dto.ts';
import { importView, isConfirmed } from './import-view.ts';
import type { ImportDto, ImportView } from './import.dto.ts';
import { ImportedPlaces } from './imported-places.service.ts';
import { RosterImport } from './import-rosters.service.ts';
import { School } from './school.entity.ts';
import { Season } from './season.entity.ts';
import { Venue } from './venue.entity.ts';

export interface PreparedSchedule {
  season: Season;
  plan: ImportPlan<WantedGame>;
  view: ImportView;
}

type Write = ImportStep<WantedGame> & { wanted: WantedGame };

@Injectable()
export class ScheduleImport {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(GameReader) private readonly reader: GameReader,
    @Inject(GameService) private readonly games: GameService,
    @Inject(GameChange) private readonly changes: GameChange,
    @Inject(ImportedPlaces) private readonly places: ImportedPlaces,
    @Inject(RosterImport) private readonly rosters: RosterImport,
  ) {}

  /** Plans what a file would do; `view.done` says that the plan is the one that was shown and is to be written now. */
  async prepare(form: ImportDto): Promise<PreparedSchedule> {
    if (form.confirm !== false) await this.work.lock(Season, [form.seasonId]);
    const season = (await this.work.first(Season, { id: form.seasonId })) ?? refuse('unknown-season');
    const file = readCsv(Buffer.from(form.csv, 'utf8'));
    const games = await this.reader.ofSeason(season.id);
    const plan = planScheduleImport(file, {
      season,
      teams: await this.rosters.teams(season.id),
      schools: await this.work.find(School, {}, { order: { id: 'ASC' } }),
      venues: await this.work.find(Venue, {}, { order: { id: 'ASC' } }),
      games: games.flatMap((game) => gameThere(game) ?? []),
      keepMissing: form.keepMissing ?? false,
    });
    return { season, plan, view: importView([plan], isConfirmed([plan], form.confirm)) };
  }

  /** Writes a plan. Answers the games that were added, changed or moved. */
  async write(season: Season, plan: ImportPlan<WantedGame>): Promise<string[]> {
    const ids: string[] = [];
    for (const step of plan.steps) if (step.action === 'drop') await this.changes.remove(step.existingId!);
    for (const step of plan.steps) {
      if (step.wanted === null || step.action === 'same') continue;
      ids.push(await this.writeStep(season, step as Write));
    }
    return ids;
  }

  private async writeStep(season: Season, { existingId, wanted, action, changes }: Write): Promise<string> {
    const opponentId = await this.places.opponentTeam(season.id, wanted);
    const [homeTeamId, visitorId] = wanted.isHome ? [wanted.teamId, opponentId] : [opponentId, wanted.teamId];
    const venueId = wanted.announced ? await this.places.venue(wanted) : null;
    const facts = { class: wanted.class, outsideId: wanted.outsideId, homeTeamId, visitorTeamIds: [visitorId] };
    const level = await this.places.levelOf(wanted.teamId);
    if (existingId === null) {
      const { playedOn, announced, clock } = wanted;
      return this.games.add({ seasonId: season.id, level, playedOn, announced, startsAtClock: clock, venueId, ...facts });
    }
    const game = await this.reader.one(existingId);
    const teams = changes.some(({ field }) => ['team', 'opponent', 'home'].includes(field)) ? { homeTeamId, visitorTeamIds: [visitorId], level } : {};
    const where = changes.some(({ field }) => ['venue', 'announced'].includes(field)) && isOpen(game) ? { announced: wanted.announced, ...(venueId ? { venueId } : {}) } : {};
    const when = action === 'move' ? { playedOn: wanted.playedOn, ...(wanted.clock ? { startsAtClock: wanted.clock } : {}) } : {};
    await this.changes.change(game.id, null, { class: wanted.class, outsideId: wanted.outsideId, ...teams, ...where, ...when }, { movesDay: true });
    return game.id;
  }
}

/** What has begun or was called off stays where it is; only its facts are corrected. */
function isOpen(game: GameView): boolean {
  return !game.hasLog && (game.status === 'planned' || game.status === 'postponed');
}

/** A game of ours as a schedule sees it: from the side of our team. */
function gameThere(game: GameView): GameThere | null {
  const ours = game.participants.find((one) => one.isOurs);
  const other = game.participants.find((one) => one.id !== ours?.id);
  if (!ours || !other) return null;
  const { id, outsideId, playedOn, venueName, class: gameClass, announced, status, hasLog } = game;
  const clock = game.startsAt ? game.startsClock : null;
  return { id, outsideId, playedOn, clock, teamId: ours.teamId, opponentName: other.schoolName, venueName, class: gameClass, isHome: ours.isHome, announced, status, hasLog };
}
