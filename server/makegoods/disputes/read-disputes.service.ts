import { Inject, Injectable } from '@nestjs/common';
import { checkOutcome } from '../../domain/makegoods/dispute.ts';
import { refuse } from '../../domain/refusals.ts';
import { isId, newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { DisputeAmending } from './dispute-amending.service.ts';
import { ReadDisputeViews } from './dispute-views.service.ts';
import type { AnswerDisputeDto, AskAboutReadDto, DisputeForSponsor, ReadDisputeView } from './read-dispute.dto.ts';
import { ReadDispute } from './read-dispute.entity.ts';

interface ReadAsked {
  contractId: string;
  commitmentId: string;
  nightId: string;
  gameId: string | null;
  entryId: string | null;
  occurrence: number;
}

const GIVEN = `select contract.id as "contractId", commitment.id as "commitmentId", entry.night_id as "nightId", entry.game_id as "gameId", entry.id as "entryId"
  from log_entry as entry
    join commitment on commitment.department_id = $1 and commitment.id = entry.commitment_id
    join contract on contract.department_id = $1 and contract.id = commitment.contract_id
  where entry.department_id = $1 and entry.id = $2 and contract.sponsor_id = $3 and entry.kind in ('read', 'mention')
    and ($4::integer = coalesce(entry.occurrence, 0)
      or exists (select from counted_read where counted_read.department_id = $1 and counted_read.entry_id = entry.id and counted_read.occurrence = $4::integer))`;

// A night on which the commitment could have been read: one of its season, within the days of its term.
const MISSING = `select contract.id as "contractId", commitment.id as "commitmentId", night.id as "nightId",
    (select case when count(*) = 1 then min(game_night.game_id::text)::uuid end from game_night where game_night.department_id = $1 and game_night.night_id = night.id) as "gameId"
  from commitment
    join contract on contract.department_id = $1 and contract.id = commitment.contract_id
    join term on term.department_id = $1 and term.id = commitment.term_id
    join night on night.department_id = $1 and night.id = $3
  where commitment.department_id = $1 and commitment.id = $2 and contract.sponsor_id = $4 and term.signed_on is not null
    and exists (select from game_night join game on game.department_id = $1 and game.id = game_night.game_id
      where game_night.department_id = $1 and game_night.night_id = night.id and game.season_id = term.season_id)`;

/** What sponsors ask about their reads, and what they are told. */
@Injectable()
export class ReadDisputes {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(ReadDisputeViews) private readonly views: ReadDisputeViews,
    @Inject(DisputeAmending) private readonly amending: DisputeAmending,
  ) {}

  /**
   * A question of a sponsor about a read of its own, or about one it misses on a night.
   *
   * @throws Refused `not-found` for anybody else's read, `read-disputed-already`
   */
  async ask(sponsorId: string, form: AskAboutReadDto): Promise<DisputeForSponsor[]> {
    const asked = (form.entryId ? await this.given(sponsorId, form) : await this.missing(sponsorId, form)) ?? refuse('not-found');
    if (asked.entryId === null) {
      const earlier = await this.work.sql('select 1 from read_dispute where department_id = $1 and commitment_id = $2 and night_id = $3 and entry_id is null and outcome is null', [asked.commitmentId, asked.nightId]);
      if (earlier.length > 0) refuse('read-disputed-already');
    }
    await this.work.insert(ReadDispute, { id: newId(), sponsorId, ...asked, askedByName: form.name, what: form.what, askedAt: new Date().toISOString() });
    return this.views.ofSponsor(sponsorId);
  }

  async ofSponsor(sponsorId: string): Promise<DisputeForSponsor[]> {
    return this.views.ofSponsor(sponsorId);
  }

  /**
   * Answered once, in words; what the log then has to say otherwise is an amendment of its night, in the same unit.
   *
   * @throws Refused `not-found`, `stale-version`, `dispute-answered-already`, `dispute-without-read`, `dispute-of-a-read`, and as the amendment does
   */
  async answer(id: string, version: number, form: AnswerDisputeDto): Promise<ReadDisputeView> {
    const before = await this.work.one(ReadDispute, id);
    checkOutcome(form.outcome, before.entryId !== null);
    if (before.outcome !== null) refuse(before.version === version ? 'dispute-answered-already' : 'stale-version');
    await this.work.update(ReadDispute, id, version, { outcome: form.outcome, answer: form.answer, answeredByPersonId: this.work.personId, answeredAt: new Date().toISOString() });
    if (form.outcome === 'takenBack') await this.amending.takeBack(before, form.answer);
    if (form.outcome === 'added') await this.amending.add(before, form.gameId ?? before.gameId, form.answer);
    return this.views.one(id);
  }

  private async given(sponsorId: string, { entryId, occurrence = 0 }: AskAboutReadDto): Promise<ReadAsked | null> {
    const [read] = await this.work.sql<Omit<ReadAsked, 'occurrence'>>(GIVEN, [entryId, sponsorId, occurrence]);
    return read ? { ...read, occurrence } : null;
  }

  private async missing(sponsorId: string, { commitmentId, nightId }: AskAboutReadDto): Promise<ReadAsked | null> {
    if (!commitmentId || !nightId || !isId(commitmentId) || !isId(nightId)) return null;
    const [read] = await this.work.sql<Omit<ReadAsked, 'entryId' | 'occurrence'>>(MISSING, [commitmentId, nightId, sponsorId]);
    return read ? { ...read, entryId: null, occurrence: 0 } : null;
  }
}
