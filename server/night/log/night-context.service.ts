import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../../domain/day.ts';
import type { RefusalCode } from '../../domain/refusals.ts';
import { isSameName } from '../../domain/night/desk/sheet/worn-tonight.ts';
import { placementCueKey } from '../../domain/packet/night-for-packet.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { CopyShelves } from '../../planning/copy-shelf.service.ts';
import { SignedCommitments } from '../../planning/signed-commitments.service.ts';
import type { SignedCommitment } from '../../planning/signed-commitments.service.ts';
import type { EntryContent } from './entry-content.ts';

interface PlacementRow {
  id: string;
  commitmentId: string;
  gameId: string;
  windowKey: string;
  place: number;
  copyVersionId: string | null;
}

interface PlayerRow {
  teamId: string;
  number: string;
  playerId: string;
}

/** A player of ours whose family chose against the name. */
interface UnnamedRow {
  teamId: string;
  number: string;
  name: string | null;
}

const UNNAMED = `select roster_entry.team_id as "teamId", roster_entry.number, player.name
  from roster_entry join player on player.department_id = $1 and player.id = roster_entry.player_id and player.announce <> 'name'
  join team on team.department_id = $1 and team.id = roster_entry.team_id
  join school on school.department_id = $1 and school.id = team.school_id and school.is_ours
  where roster_entry.department_id = $1 and roster_entry.team_id = any($2::uuid[])`;

/** An entry with what the night adds to it: whose read it is, in which game, which player wears the number. */
export interface PlacedEntry extends EntryContent {
  playerId: string | null;
  copyVersionId: string | null;
}

/** What an entry may name: games, teams, planned reads and commitments of this night's department. */
export class NightContext {
  constructor(
    private readonly gameIds: ReadonlySet<string>,
    private readonly teamIds: ReadonlySet<string>,
    private readonly placements: ReadonlyMap<string, PlacementRow>,
    private readonly commitments: ReadonlyMap<string, Pick<SignedCommitment, 'counting' | 'termState'>>,
    private readonly players: readonly PlayerRow[],
    private readonly unnamed: readonly UnnamedRow[],
  ) {}

  /** Fills in what follows from the planned read and the shirt's number. */
  place(entry: EntryContent): PlacedEntry {
    const planned = entry.placementId === null ? undefined : this.placements.get(entry.placementId);
    const player = this.players.find((one) => one.teamId === entry.teamId && one.number === entry.playerNumber);
    return {
      ...entry,
      detail: entry.kind === 'worn' ? this.wornDetail(entry) : entry.detail,
      commitmentId: entry.commitmentId ?? planned?.commitmentId ?? null,
      gameId: entry.gameId ?? planned?.gameId ?? null,
      windowKey: entry.windowKey ?? planned?.windowKey ?? null,
      cueKey: entry.cueKey ?? (planned ? placementCueKey(planned.gameId, planned.windowKey, planned.place) : null),
      copyVersionId: planned?.copyVersionId ?? null,
      playerId: player?.playerId ?? null,
    };
  }

  /** Whose family chose against the name has none in the log either, whatever was typed: only which number is worn instead. */
  private wornDetail({ teamId, playerNumber, detail }: EntryContent): EntryContent['detail'] {
    const { name, sayAs: _, ...rest } = detail ?? {};
    const listed = rest['wornInstead'] ?? playerNumber;
    const isTyped = (one: UnnamedRow): boolean => one.number === listed || isSameName(one.name, typeof name === 'string' ? name : null);
    const unnamed = this.unnamed.find((one) => one.teamId === teamId && isTyped(one));
    return unnamed ? { ...rest, wornInstead: unnamed.number } : detail;
  }

  /** Why an entry names something that is not of this night, or null. */
  whyNot(entry: PlacedEntry): RefusalCode | null {
    if (entry.gameId !== null && !this.gameIds.has(entry.gameId)) return 'unknown-game';
    if (entry.teamId !== null && !this.teamIds.has(entry.teamId)) return 'unknown-team';
    if (entry.placementId !== null) {
      const planned = this.placements.get(entry.placementId);
      if (!planned) return 'unknown-placement';
      const isThis = planned.commitmentId === entry.commitmentId && planned.gameId === entry.gameId;
      if (!isThis || entry.cueKey !== placementCueKey(planned.gameId, planned.windowKey, planned.place)) return 'cue-of-another-read';
    }
    return this.whyNotCommitment(entry) ?? this.whyNotCue(entry);
  }

  private whyNotCommitment(entry: PlacedEntry): RefusalCode | null {
    if (entry.commitmentId === null) return null;
    const commitment = this.commitments.get(entry.commitmentId);
    if (!commitment) return 'unknown-commitment';
    if (commitment.termState === 'draft') return 'contract-not-signed';
    if (commitment.termState === 'closed') return 'contract-closed';
    return entry.kind === 'mention' && commitment.counting !== 'onOccurrence' ? 'mention-on-schedule' : null;
  }

  private whyNotCue({ cueKey, gameId }: PlacedEntry): RefusalCode | null {
    const game = /^game:([^/]+)\//.exec(cueKey ?? '')?.[1];
    if (cueKey === null || cueKey.startsWith('night/')) return null;
    if (game === undefined || !this.gameIds.has(game)) return 'unknown-cue';
    return gameId !== null && gameId !== game ? 'unknown-cue' : null;
  }
}

/** What is asked of a read whose copy takes turns: the packet read the one on turn, whatever the placement was given. */
interface Turning {
  rotates: boolean;
  sponsorId: string;
  readKindId: string;
  day: Day;
}

const PLACEMENTS = `select placement.id, placement.commitment_id as "commitmentId", placement.game_id as "gameId", placement.window_key as "windowKey", placement.place,
    placement.copy_version_id as "copyVersionId", coalesce(copy.rotates, false) as rotates, copy.sponsor_id as "sponsorId", copy.read_kind_id as "readKindId",
    night.held_on as day
  from placement join night on night.department_id = $1 and night.id = placement.night_id
  left join copy_version on copy_version.department_id = $1 and copy_version.id = placement.copy_version_id
  left join copy on copy.department_id = $1 and copy.id = copy_version.copy_id
  where placement.department_id = $1 and placement.night_id = $2 and placement.id = any($3::uuid[])`;

@Injectable()
export class NightContexts {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(SignedCommitments) private readonly commitments: SignedCommitments,
    @Inject(CopyShelves) private readonly shelves: CopyShelves,
  ) {}

  async of(nightId: string, entries: readonly EntryContent[]): Promise<NightContext> {
    const rows = await this.work.sql<{ gameId: string; teamId: string | null }>(
      `select game_night.game_id as "gameId", game_participant.team_id as "teamId" from game_night
         left join game_participant on game_participant.department_id = $1 and game_participant.game_id = game_night.game_id
        where game_night.department_id = $1 and game_night.night_id = $2`,
      [nightId],
    );
    const teamIds = rows.flatMap((row) => (row.teamId === null ? [] : [row.teamId]));
    const placements = await this.placementsOf(nightId, entries);
    const named = entries.flatMap((entry) => (entry.commitmentId === null ? [] : [entry.commitmentId]));
    const commitments = await this.commitments.countingById([...named, ...placements.map((placement) => placement.commitmentId)]);
    const numbers = entries.flatMap((entry) => (entry.playerNumber === null ? [] : [entry.playerNumber]));
    const players =
      numbers.length === 0
        ? []
        : await this.work.sql<PlayerRow>(
            `select team_id as "teamId", number, player_id as "playerId" from roster_entry where department_id = $1 and team_id = any($2::uuid[]) and number = any($3::text[])`,
            [teamIds, numbers],
          );
    const unnamed = entries.some((entry) => entry.kind === 'worn') ? await this.work.sql<UnnamedRow>(UNNAMED, [teamIds]) : [];
    return new NightContext(new Set(rows.map((row) => row.gameId)), new Set(teamIds), new Map(placements.map((one) => [one.id, one])), commitments, players, unnamed);
  }

  private async placementsOf(nightId: string, entries: readonly EntryContent[]): Promise<PlacementRow[]> {
    const ids = entries.flatMap((entry) => (entry.placementId === null ? [] : [entry.placementId]));
    if (ids.length === 0) return [];
    const placements = await this.work.sql<PlacementRow & Turning>(PLACEMENTS, [nightId, ids]);
    const turning = placements.filter((one) => one.rotates);
    if (turning.length === 0) return placements;
    const shelf = await this.shelves.of(turning.map((one) => one.sponsorId), turning.map((one) => one.gameId));
    return placements.map((one) => (one.rotates ? { ...one, copyVersionId: shelf.versionFor({ ...one, preferred: one.copyVersionId }) } : one));
  }
}
