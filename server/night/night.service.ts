import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../access/department.service.ts';
import type { Visitor } from '../access/visitor.ts';
import { mayUse } from '../domain/access/rights.ts';
import type { Decisions } from '../domain/night/count-outcome.ts';
import { statusAtSignOff, whyNotSignOff } from '../domain/night/sign-off.ts';
import { takenBackIds } from '../domain/night/take-back.ts';
import { refuse } from '../domain/refusals.ts';
import { newId } from '../platform/database/ids.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { LogBatch } from './log-batch.service.ts';
import { sentenceOfEntry } from './log-sentence.ts';
import type { AmendDto, AmendView, BatchView, DecisionDto, LogBatchDto, LogEntryView, NightLogView, SignOffDto, SignOffView } from './log.dto.ts';
import { NightBooking } from './night-booking.service.ts';
import { NightCounting } from './night-counting.service.ts';
import type { CountedNight } from './night-counting.service.ts';
import { NightLog } from './night-log.service.ts';
import type { LoggedEntry } from './night-log.service.ts';
import { WornNumbers } from './worn-numbers.service.ts';

@Injectable()
export class NightTableService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(NightLog) private readonly log: NightLog,
    @Inject(LogBatch) private readonly batch: LogBatch,
    @Inject(NightCounting) private readonly counting: NightCounting,
    @Inject(NightBooking) private readonly booking: NightBooking,
    @Inject(WornNumbers) private readonly worn: WornNumbers,
  ) {}

  async show(nightId: string): Promise<NightLogView> {
    const night = await this.log.night(nightId);
    const entries = await this.log.entries(nightId);
    const counted = await this.counting.count(nightId, entries, new Map(), night.isSignedOff);
    return {
      entries: viewsOf(entries, counted),
      state: night.isSignedOff ? 'signedOff' : 'open',
      toCount: night.isSignedOff ? counted.claims.length : counted.count.reads.filter((read) => read.outcome === 'counts').length,
      open: counted.count.open,
    };
  }

  async take(nightId: string, form: LogBatchDto): Promise<BatchView> {
    const night = await this.log.lock(nightId);
    return { results: await this.batch.take(night, form, false) };
  }

  /** Closes the night: what was read moves from owed to given, and earns. */
  async signOff(nightId: string, form: SignOffDto, visitor: Visitor): Promise<SignOffView> {
    const night = await this.log.lock(nightId);
    const games = await this.playOut(nightId, form, visitor, night);
    const entries = await this.log.entries(nightId);
    const counted = await this.counting.count(nightId, entries, decisionsOf(form.decisions), false);
    const note = [form.note, form.overrideReason && `Signed off before its day: ${form.overrideReason}`].filter(Boolean).join('\n') || null;
    await this.work.sql('insert into sign_off (department_id, id, night_id, signed_off_by_person_id, note) values ($1, $2, $3, $4, $5)', [
      newId(), nightId, this.work.personId, note,
    ]);
    const booked = await this.booking.book(night, counted);
    await this.worn.keep(entries);
    return { night: { id: night.id, heldOn: night.heldOn, state: 'signedOff', games }, counted: booked.counted, earnedCents: booked.earnedCents };
  }

  /** Entries after sign-off, and second thoughts about earlier ones; counted at once. */
  async amend(nightId: string, form: AmendDto): Promise<AmendView> {
    const night = await this.log.lock(nightId);
    if (!night.isSignedOff) refuse('night-not-signed-off');
    const results = await this.batch.take(night, form, true);
    const fresh = new Set(results.filter((result) => result.status === 'stored').map((result) => result.id));
    const entries = await this.log.entries(nightId);
    const counted = await this.counting.count(nightId, entries, decisionsOf(form.decisions), true, fresh);
    return { results, ...(await this.booking.book(night, counted)) };
  }

  /** What was logged and not suspended has been played. */
  private async playOut(nightId: string, form: SignOffDto, visitor: Visitor, night: { heldOn: SignOffView['night']['heldOn']; isSignedOff: boolean }): Promise<{ id: string; status: string }[]> {
    const games = await this.work.sql<{ id: string; status: Parameters<typeof statusAtSignOff>[0]; hasLog: boolean }>(
      `select game.id, game.status, exists (select from log_entry where log_entry.department_id = $1 and log_entry.night_id = $2 and log_entry.game_id = game.id) as "hasLog"
         from game_night join game on game.department_id = game_night.department_id and game.id = game_night.game_id
        where game_night.department_id = $1 and game_night.night_id = $2 order by game.id for update of game`,
      [nightId],
    );
    const no = whyNotSignOff({ heldOn: night.heldOn as never, isSignedOff: night.isSignedOff, games }, await this.departments.today());
    const isOverridden = no === 'night-not-yet-held' && form.overrideReason && mayUse(visitor.roles, 'override a refusal');
    if (no && !isOverridden) refuse(no);
    const after = games.map((game) => ({ id: game.id, before: game.status, status: statusAtSignOff(game.status, game.hasLog) }));
    const played = after.filter((game) => game.status === 'played' && game.before !== 'played').map((game) => game.id);
    if (played.length > 0) {
      await this.work.sql(`update game set status = 'played', version = version + 1 where department_id = $1 and id = any($2::uuid[])`, [played]);
    }
    return after.map(({ id, status }) => ({ id, status }));
  }
}

function decisionsOf(decisions: readonly DecisionDto[] | undefined): Decisions {
  return new Map((decisions ?? []).map(({ entryId, counts }) => [entryId, counts ? 'counts' : 'doesNotCount']));
}

function viewsOf(entries: readonly LoggedEntry[], { games, count }: CountedNight): LogEntryView[] {
  const gone = takenBackIds(entries);
  const numberOf = new Map(entries.map((entry) => [entry.id, entry.number]));
  const labelOf = new Map(games.map((game) => [game.id, game.label]));
  const outcomeOf = new Map(count.reads.map((read) => [read.entryId, read]));
  const happeningOf = new Map([...count.occurrences.values()].flat().flatMap((one) => one.entryIds.map((id) => [id, one.number] as const)));
  return entries.map((entry) => {
    const { nightId: _, playerId: ____, contentDigest: _____, readKindName, teamName: ______, takesBackNumber: _______, ...shown } = entry;
    const read = outcomeOf.get(entry.id);
    return {
      ...shown,
      gameLabel: entry.gameId === null ? null : (labelOf.get(entry.gameId) ?? null),
      occurrence: entry.occurrence ?? happeningOf.get(entry.id) ?? (read && read.occurrence > 0 ? read.occurrence : null),
      label: readKindName ?? null,
      takenBack: gone.has(entry.id),
      counting: read?.outcome ?? null,
      sentence: sentenceOfEntry(entry, entry.takesBackEntryId === null ? null : (numberOf.get(entry.takesBackEntryId) ?? null)),
    };
  });
}
