import { Inject, Injectable } from '@nestjs/common';
import { placementCueKey } from '../domain/packet/night-for-packet.ts';
import { covers } from '../domain/sponsorship/covered-games.ts';
import { limitsOf } from '../domain/sponsorship/company/limits.ts';
import { kindOfWindow } from '../domain/season/window-names.ts';
import type { WindowKind } from '../domain/season/sport-profile.ts';
import { refuse } from '../domain/refusals.ts';
import { isId, newId } from '../platform/database/ids.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import type { Listed } from '../platform/http/lists.ts';
import { CompanyLimits } from '../sponsorship/company/company-limits.service.ts';
import { CopyShelves } from './copy-shelf.service.ts';
import { keysOfKind } from './game-windows.ts';
import { Replacements } from './replacements.service.ts';
import { PlannedGames } from './planned-games.service.ts';
import type { PlannedGame } from './planned-games.service.ts';
import type { PlacementDto, PlacementView } from './placement.dto.ts';
import { Placement } from './placement.entity.ts';
import { PLACEMENT_FROM } from './placement.sql.ts';
import { SeasonPlans } from './proposals/season-plans.service.ts';
import { SignedCommitments } from './signed-commitments.service.ts';
import type { SignedCommitment } from './signed-commitments.service.ts';

const SELECT = `select placement.id, placement.commitment_id as "commitmentId", contract.id as "contractId", sponsor.id as "sponsorId", sponsor.name as "sponsorName",
    sponsor.say_as as "sponsorSayAs", read_kind.id as "readKindId", read_kind.name as "readKindName", read_kind.place_group as "placeGroup", placement.game_id as "gameId", placement.night_id as "nightId",
    placement.window_key as "windowKey", placement.place, placement.copy_version_id as "copyVersionId", placement.makegood_id as "makegoodId",
    placement.is_pinned as "isPinned", placement.version
  ${PLACEMENT_FROM}`;

interface Neighbour {
  windowKey: string;
  place: number;
  commitmentId: string;
  sponsorId: string;
  readKindId: string;
  placeGroup: string | null;
  makegoodId: string | null;
}

@Injectable()
export class PlacementService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(PlannedGames) private readonly games: PlannedGames,
    @Inject(SignedCommitments) private readonly commitments: SignedCommitments,
    @Inject(CopyShelves) private readonly shelves: CopyShelves,
    @Inject(CompanyLimits) private readonly limits: CompanyLimits,
    @Inject(Replacements) private readonly replacing: Replacements,
    @Inject(SeasonPlans) private readonly plans: SeasonPlans,
  ) {}

  async ofNight(nightId: string): Promise<Listed<PlacementView>> {
    const known = isId(nightId) ? await this.work.sql('select 1 from night where department_id = $1 and id = $2', [nightId]) : [];
    if (known.length === 0) refuse('not-found');
    const games = await this.games.ofNight(nightId);
    const rows = await this.work.sql<Omit<PlacementView, 'cueKey' | 'gameLabel'>>(`${SELECT} and placement.night_id = $2`, [nightId]);
    const orderOf = (row: { gameId: string; windowKey: string; place: number }): number => {
      const at = games.findIndex((game) => game.id === row.gameId);
      const window = games[at]?.windows.findIndex((one) => one.key === row.windowKey) ?? 0;
      return at * 10_000 + window * 100 + row.place;
    };
    const data = rows
      .toSorted((one, other) => orderOf(one) - orderOf(other))
      .map((row) => viewOf(row, games.find((game) => game.id === row.gameId)?.label ?? ''));
    return { data, total: data.length };
  }

  /** Places one read by hand; it is pinned, so that nothing but a person moves it. */
  async add(form: PlacementDto): Promise<PlacementView> {
    await this.plans.moveOnWith([form.gameId]);
    await this.work.sql('select 1 from game where department_id = $1 and id = $2 for update', [form.gameId]);
    const game = (await this.games.one(form.gameId)) ?? refuse('unknown-game');
    const signed = (await this.commitments.byId([form.commitmentId])).get(form.commitmentId) ?? refuse('unknown-commitment');
    const commitment = form.makegoodId ? await this.replacing.of(form.makegoodId, signed) : signed;
    const nightId = this.checkGame(game, commitment);
    await this.checkCompany(form.windowKey, game, commitment);
    const neighbours = await this.neighbours(game.id);
    const place = this.checkPlace(form, game, commitment, neighbours);
    const shelf = await this.shelves.of([commitment.sponsorId], [game.id]);
    const id = form.id ?? newId();
    await this.work.insert(Placement, {
      id,
      commitmentId: commitment.id,
      gameId: game.id,
      nightId,
      windowKey: form.windowKey,
      place,
      copyVersionId: shelf.versionFor({ ...commitment, day: game.playedOn, gameId: game.id }),
      makegoodId: form.makegoodId ?? null,
      isPinned: true,
    });
    const [row] = await this.work.sql<Omit<PlacementView, 'cueKey' | 'gameLabel'>>(`${SELECT} and placement.id = $2`, [id]);
    return viewOf(row!, game.label);
  }

  async remove(id: string): Promise<void> {
    const placement = await this.work.one(Placement, id);
    await this.plans.moveOnWith([placement.gameId]);
    await this.work.sql('select 1 from night where department_id = $1 and id = $2 for update', [placement.nightId]);
    const [used] = await this.work.sql<{ signedOff: boolean; logged: boolean }>(
      `select exists (select from sign_off where department_id = $1 and night_id = $2) as "signedOff",
         exists (select from log_entry where department_id = $1 and night_id = $2 and placement_id = $3) as logged`,
      [placement.nightId, id],
    );
    if (used?.signedOff) refuse('night-already-signed-off');
    if (used?.logged) refuse('placement-already-logged');
    await this.work.remove(Placement, { id });
  }

  private checkGame(game: PlannedGame, commitment: SignedCommitment): string {
    if (commitment.termState !== 'signed') refuse('contract-not-signed');
    if (commitment.heldOn !== null) refuse('contract-held', { heldOn: commitment.heldOn });
    if (commitment.counting === 'onOccurrence') refuse('placement-on-occurrence');
    if (game.status !== 'planned' && game.status !== 'underWay') refuse('placement-game-not-open');
    if (!covers(commitment, game)) refuse('placement-game-not-covered');
    if (game.isSignedOff) refuse('night-already-signed-off');
    return game.nightId ?? refuse('placement-game-without-night');
  }

  /** A window that an exclusive right keeps for a competitor takes no read of this sponsor. */
  private async checkCompany(windowKey: string, game: PlannedGame, commitment: SignedCommitment): Promise<void> {
    const kind = kindOfWindow(windowKey) as WindowKind;
    const limit = limitsOf(await this.limits.of(game.seasonId), commitment).find((one) => one.gameIds.includes(game.id) && (one.windowKinds?.includes(kind) ?? true));
    if (limit) refuse('window-exclusive', { sponsor: limit.sponsorName, category: limit.categoryName, deal: limit.dealName });
  }

  private checkPlace(form: PlacementDto, game: PlannedGame, commitment: SignedCommitment, neighbours: readonly Neighbour[]): number {
    const window = game.windows.find((one) => one.key === form.windowKey) ?? refuse('unknown-window', {}, { windowKey: 'is no window of this game' });
    if (window.owner !== 'us') refuse('window-not-ours');
    if (!keysOfKind(commitment.windows, game.windows).includes(window.key)) refuse('window-not-of-the-kind', { readKind: commitment.readKindName });
    const mine = neighbours.filter((one) => one.commitmentId === commitment.id && one.makegoodId === null).length;
    if (!form.makegoodId && commitment.mostPerGame !== null && mine >= commitment.mostPerGame) refuse('placement-most-per-game', { most: commitment.mostPerGame });
    const sponsors = new Set(neighbours.filter((one) => one.readKindId === commitment.readKindId).map((one) => one.sponsorId));
    if (!sponsors.has(commitment.sponsorId) && sponsors.size >= commitment.sponsorsPerGame) {
      refuse('read-kind-full', { readKind: commitment.readKindName, most: commitment.sponsorsPerGame });
    }
    const inWindow = neighbours.filter((one) => one.windowKey === window.key);
    const group = commitment.placeGroup;
    const ofGroup = group === null ? undefined : window.groupPlaces[group];
    if (group !== null && ofGroup !== undefined && inWindow.filter((one) => one.placeGroup === group).length >= ofGroup) refuse('window-group-full', { group, places: ofGroup });
    const taken = new Set(inWindow.map((one) => one.place));
    if (form.place !== undefined) {
      if (form.place > window.places) refuse('window-full', { places: window.places });
      return taken.has(form.place) ? refuse('placement-place-taken') : form.place;
    }
    for (let place = 1; place <= window.places; place += 1) if (!taken.has(place)) return place;
    return refuse('window-full', { places: window.places });
  }

  private async neighbours(gameId: string): Promise<Neighbour[]> {
    return this.work.sql<Neighbour>(`${SELECT} and placement.game_id = $2`, [gameId]);
  }
}

function viewOf(row: Omit<PlacementView, 'cueKey' | 'gameLabel'>, gameLabel: string): PlacementView {
  return { ...row, gameLabel, cueKey: placementCueKey(row.gameId, row.windowKey, row.place) };
}
