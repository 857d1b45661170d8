import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../../domain/day.ts';
import type { NightForPacket } from '../../domain/packet/night-for-packet.ts';
import { linesOfNames } from '../../domain/packet/readiness-of-names.ts';
import { linesOfNight } from '../../domain/packet/readiness-of-night.ts';
import { linesOfReads } from '../../domain/packet/readiness-of-reads.ts';
import { linesOfTeams } from '../../domain/packet/readiness-of-teams.ts';
import type { Looked } from '../../domain/packet/readiness.ts';
import { wordsNotKnown } from '../../domain/packet/spoken-time.ts';
import { GLANCE_ROWS, glanceOf } from '../../domain/reports/glance.ts';
import type { GlanceNight, GlanceRow } from '../../domain/reports/glance.ts';
import { unplacedReads } from '../../domain/reports/unplaced-reads.ts';
import { NightAttendances } from '../../night/attendance/night-attendance.service.ts';
import { NightsForPackets } from '../../packet/nights-for-packets.service.ts';
import { PapersService } from '../../packet/papers.service.ts';
import { pronouncing } from '../../packet/pronouncing.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { SignedCommitments } from '../../planning/signed-commitments.service.ts';
import { BoardSeasons } from './board-season.service.ts';
import type { GlanceNightView, GlanceView, ToMend } from './board.dto.ts';
import { GAMES, NIGHTS, PLACED } from './glance-rows.ts';
import type { GameRow, NightRow, PlacedRow } from './glance-rows.ts';

const MENDED_FIRST = 12;

type Prepared = Pick<GlanceNight, 'lines' | 'placed' | 'mentions' | 'unplaced'>;
const NOTHING_PREPARED: Prepared = { lines: [], placed: 0, mentions: 0, unplaced: 0 };

/** What the night's own facts tell without writing its packet; `cues` are what only a written packet has. */
function linesOf(night: NightForPacket, unknown: (name: string) => readonly string[]): GlanceNight['lines'] {
  const looked: Looked = { night, cues: [], windows: [], broken: [], empty: [], redacted: [], wordsNotKnown: unknown };
  return [...linesOfNight(looked), ...linesOfTeams(looked), ...linesOfNames(looked), ...linesOfReads(looked)];
}

/** All nights of a season against what each has to have, by the rules of the packet, in a number of statements that does not grow with the nights. */
@Injectable()
export class GlanceService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(BoardSeasons) private readonly seasons: BoardSeasons,
    @Inject(NightsForPackets) private readonly nights: NightsForPackets,
    @Inject(PapersService) private readonly papers: PapersService,
    @Inject(SignedCommitments) private readonly commitments: SignedCommitments,
    @Inject(NightAttendances) private readonly attendances: NightAttendances,
  ) {}

  /** @throws Refused `not-found` */
  async show(asked: string | undefined): Promise<GlanceView> {
    const season = await this.seasons.chosen(asked);
    const nights = season.seasonId === null ? [] : await this.nightsOf(season.seasonId, season.today);
    const toMend = nights.flatMap(toMendOn).toSorted((one, other) => (one.state === other.state ? 0 : one.state === 'mend' ? -1 : 1));
    return { ...season, nights, open: openOn(nights), next: toMend.slice(0, MENDED_FIRST), nextLeftOff: Math.max(0, toMend.length - MENDED_FIRST) };
  }

  private async nightsOf(seasonId: string, today: Day): Promise<GlanceNightView[]> {
    const rows = await this.work.sql<NightRow>(NIGHTS, [seasonId]);
    const toCome = rows.filter(({ isSignedOff, heldOn }) => !isSignedOff && heldOn >= today).map(({ nightId }) => nightId);
    const prepared = await this.prepared(seasonId, toCome);
    // Only what was issued for a night to come can be out of date, and only it has to be written anew to tell.
    const papers = await this.papers.of(rows.filter((row) => row.packetIssued !== null && toCome.includes(row.nightId)).map(({ nightId }) => nightId));
    const came = await this.attendances.ofNights(rows.filter(({ isSignedOff }) => isSignedOff).map(({ nightId }) => nightId));
    return rows.map(({ nightId, heldOn, label, isSignedOff, packetIssued }) => ({
      nightId, heldOn, label, isSignedOff,
      isOver: heldOn < today,
      cells: glanceOf({ nightId, heldOn, isSignedOff, packetIssued, ...(prepared.get(nightId) ?? NOTHING_PREPARED), packetBecause: papers.get(nightId)?.packetBecause ?? null, attendance: came.get(nightId)?.attendance ?? null }, today),
    }));
  }

  private async prepared(seasonId: string, nightIds: readonly string[]): Promise<Map<string, Prepared>> {
    if (nightIds.length === 0) return new Map();
    const facts = await this.nights.load(nightIds);
    const games = await this.work.sql<GameRow>(GAMES, [nightIds]);
    const placed = await this.work.sql<PlacedRow>(PLACED, [nightIds]);
    const unplaced = unplacedReads(await this.commitments.ofSeason(seasonId), games, placed);
    const words = await pronouncing();
    const known = new Map<string, readonly string[]>();
    const unknown = (name: string) => known.get(name) ?? known.set(name, wordsNotKnown(name, words)).get(name)!;
    const sum = (night: NightForPacket, of: 'placements' | 'mentions') => night.games.reduce((total, game) => total + game[of].length, 0);
    return new Map(facts.map((night) => [night.nightId, { lines: linesOf(night, unknown), placed: sum(night, 'placements'), mentions: sum(night, 'mentions'), unplaced: unplaced.get(night.nightId) ?? 0 }]));
  }
}

function toMendOn({ nightId, heldOn, label, cells }: GlanceNightView): ToMend[] {
  return GLANCE_ROWS.flatMap((row) => {
    const { state, sentences, to } = cells[row];
    if ((state !== 'mend' && state !== 'look') || to === null) return [];
    return [{ nightId, heldOn, label, row, state, to, sentence: sentences[0] ?? cells[row].words }];
  });
}

function openOn(nights: readonly GlanceNightView[]): GlanceView['open'] {
  const count = (row: GlanceRow, state: 'mend' | 'look') => nights.filter(({ cells }) => cells[row].state === state).length;
  return Object.fromEntries(GLANCE_ROWS.map((row) => [row, { mend: count(row, 'mend'), look: count(row, 'look') }])) as GlanceView['open'];
}
