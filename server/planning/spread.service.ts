import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../access/department.service.ts';
import type { Day } from '../domain/day.ts';
import { firstSpread } from '../domain/planning/spread.ts';
import type { SpreadCommitment, SpreadGame, SpreadPlacement } from '../domain/planning/spread.ts';
import { refuse } from '../domain/refusals.ts';
import type { LinePosition, Position } from '../domain/sponsorship/position.ts';
import { readsOfLine } from '../domain/sponsorship/slot-reads.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { TermLedger } from '../sponsorship/term-ledger.service.ts';
import { CopyShelves } from './copy-shelf.service.ts';
import { keysOfKind } from './game-windows.ts';
import type { SpreadView } from './placement.dto.ts';
import { Placement } from './placement.entity.ts';
import { SeasonPlans } from './proposals/season-plans.service.ts';
import { PlannedGames } from './planned-games.service.ts';
import type { PlannedGame } from './planned-games.service.ts';
import { SignedCommitments } from './signed-commitments.service.ts';
import type { SignedCommitment } from './signed-commitments.service.ts';

interface Placed extends SpreadPlacement {
  isOpen: boolean;
}

/** Gives every read still owed a place on the coming nights; what has a place keeps it. */
@Injectable()
export class SpreadService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(PlannedGames) private readonly games: PlannedGames,
    @Inject(SignedCommitments) private readonly commitments: SignedCommitments,
    @Inject(CopyShelves) private readonly shelves: CopyShelves,
    @Inject(TermLedger) private readonly ledger: TermLedger,
    @Inject(SeasonPlans) private readonly plans: SeasonPlans,
  ) {}

  async spread(seasonId: string): Promise<SpreadView> {
    const season = await this.work.sql('select 1 from season where department_id = $1 and id = $2 for update', [seasonId]);
    if (season.length === 0) refuse('unknown-season');
    await this.plans.moveOn(seasonId);
    const today = await this.departments.today();
    const all = await this.games.ofSeason(seasonId);
    const remaining = all.filter((game) => isRemaining(game, today));
    const signed = await this.commitments.ofSeason(seasonId);
    const placed = await this.placedIn(seasonId);
    const positions = await this.ledger.positions([...new Set(signed.map((one) => one.termId))]);
    const isHere = new Set(remaining.map((game) => game.id));
    const spread = firstSpread({
      games: remaining.map(spreadGame),
      commitments: signed.map((one) => spreadCommitment(one, positions.get(one.termId), remaining, placed.filter((it) => it.isOpen && !isHere.has(it.gameId)))),
      alreadyPlaced: placed.filter((one) => isHere.has(one.gameId)),
    });
    await this.write(spread.placements, signed, remaining);
    const byId = new Map(signed.map((one) => [one.id, one]));
    return {
      placed: spread.placements.length,
      left: spread.unplaced.map(({ commitmentId, reads }) => {
        const { sponsorName, readKindName } = byId.get(commitmentId)!;
        return { commitmentId, sponsorName, readKindName, notPlaced: reads };
      }),
    };
  }

  private async write(placements: readonly SpreadPlacement[], signed: readonly SignedCommitment[], games: readonly PlannedGame[]): Promise<void> {
    const shelf = await this.shelves.of(signed.map((one) => one.sponsorId), games.map((game) => game.id));
    const commitments = new Map(signed.map((one) => [one.id, one]));
    const byId = new Map(games.map((game) => [game.id, game]));
    const rows = placements.map(({ commitmentId, gameId, window, place }) => {
      const game = byId.get(gameId)!;
      const { sponsorId, readKindId } = commitments.get(commitmentId)!;
      const copyVersionId = shelf.versionFor({ sponsorId, readKindId, day: game.playedOn, gameId });
      return { commitmentId, gameId, nightId: game.nightId!, windowKey: window, place, copyVersionId, isPinned: false };
    });
    for (let from = 0; from < rows.length; from += 500) await this.work.insert(Placement, rows.slice(from, from + 500));
  }

  private async placedIn(seasonId: string): Promise<Placed[]> {
    return this.work.sql<Placed>(
      `select coalesce(placement.makegood_id, placement.commitment_id) as "commitmentId", placement.game_id as "gameId", placement.window_key as window, placement.place,
         not exists (select from sign_off where sign_off.department_id = $1 and sign_off.night_id = placement.night_id)
           and game.status not in ('cancelled', 'postponed') as "isOpen"
       from placement join game on game.department_id = placement.department_id and game.id = placement.game_id
      where placement.department_id = $1 and game.season_id = $2`,
      [seasonId],
    );
  }
}

function isRemaining(game: PlannedGame, today: Day): boolean {
  const isEligible = game.isHome && game.announced && (game.class === 'regular' || game.class === 'conference');
  return isEligible && game.status === 'planned' && game.playedOn >= today && game.nightId !== null && !game.isSignedOff;
}

function spreadGame(game: PlannedGame): SpreadGame {
  return {
    gameId: game.id,
    nightId: game.nightId!,
    // A moved game takes its reads along, so it is judged by the day it was first planned for.
    playedOn: game.movedFromOn ?? game.playedOn,
    teamIds: game.ourTeamIds,
    level: game.level,
    isAnnounced: game.announced,
    isHome: game.isHome,
    places: Object.fromEntries(game.windows.map((window) => [window.key, window.places])),
  };
}

/** Missed reads for which others were agreed: they are owed, and their replacements have places of their own. */
function awaitingMakegood(line: LinePosition): number {
  return line.slots.flatMap((slot) => slot.makegoods).reduce((sum, makegood) => sum + makegood.missed - makegood.settled, 0);
}

/** @param elsewhere placements on nights that are held but not signed off yet: those reads are spoken for */
function spreadCommitment(one: SignedCommitment, position: Position | undefined, games: readonly PlannedGame[], elsewhere: readonly Placed[]): SpreadCommitment {
  const line = position?.lines.find((it) => it.terms.lineId === one.id);
  const owed = line ? readsOfLine(line).owed - awaitingMakegood(line) : 0;
  const spokenFor = elsewhere.filter((it) => it.commitmentId === one.id).length;
  const windows = [...new Map(games.flatMap((game) => game.windows).map((window) => [window.key, window])).values()];
  return {
    commitmentId: one.id,
    sponsorId: one.sponsorId,
    readKindId: one.readKindId,
    counting: one.counting,
    readsOwed: one.counting === 'perTerm' ? Math.max(0, owed - spokenFor) : one.counting === 'onOccurrence' || owed === 0 ? 0 : one.reads,
    startsOn: one.startsOn,
    endsOn: one.endsOn,
    teamIds: one.teamIds,
    levels: one.levels,
    leastPerGame: one.leastPerGame,
    mostPerGame: one.mostPerGame,
    windows: keysOfKind(one.windows, windows),
    sponsorsPerGame: one.sponsorsPerGame,
    priority: one.priority,
  };
}
