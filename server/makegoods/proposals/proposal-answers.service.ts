import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import type { Day } from '../../domain/day.ts';
import { awaitingIn } from '../../domain/makegoods/shortfall-of-line.ts';
import { refuse } from '../../domain/refusals.ts';
import { lineOf } from '../../domain/sponsorship/line-of.ts';
import { readsOfSlot } from '../../domain/sponsorship/slot-reads.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Contract } from '../../sponsorship/contract.entity.ts';
import { LineGames } from '../../sponsorship/line-games.service.ts';
import { TermLedger } from '../../sponsorship/term-ledger.service.ts';
import { Term } from '../../sponsorship/term.entity.ts';
import { RolledContracts } from '../../sponsorship/rollover/rolled-contracts.service.ts';
import type { SettleProposalDto } from './makegood-proposal.dto.ts';
import { MakegoodProposal } from './makegood-proposal.entity.ts';
import { MissedReadRow } from './missed-read.entity.ts';
import { ProposalSettling } from './proposal-settling.service.ts';
import { ReplacementPlaces } from './replacement-places.service.ts';

export interface Answer {
  name: string;
  on: Day;
  note: string | null;
  how: 'link' | 'recordedByDirector';
}

// Of the reads it speaks for, those whose read was counted since: an entry that came late.
const GIVEN_SINCE = `select count(*)::int as reads from missed_read where missed_read.department_id = $1 and missed_read.proposal_id = $2
    and exists (select from counted_read join log_entry on log_entry.department_id = $1 and log_entry.id = counted_read.entry_id
      where counted_read.department_id = $1 and log_entry.placement_id = missed_read.placement_id)`;

const WAITING = `select coalesce(sum(missed_reads), 0)::int as reads from makegood_proposal as proposal
  where proposal.department_id = $1 and proposal.commitment_id = $2 and proposal.id <> $3 and proposal.missed_game_id is not distinct from $4::uuid
    and proposal.state = 'accepted' and proposal.makegood_id is null`;

/** What became of a proposal: each answer is given once, and what it leads to happens in the same unit. */
@Injectable()
export class ProposalAnswers {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(TermLedger) private readonly terms: TermLedger,
    @Inject(LineGames) private readonly games: LineGames,
    @Inject(RolledContracts) private readonly rolled: RolledContracts,
    @Inject(ReplacementPlaces) private readonly places: ReplacementPlaces,
    @Inject(ProposalSettling) private readonly settling: ProposalSettling,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  /**
   * @param version as whoever answers saw it; null for the sponsor, who sees no version
   * @throws Refused `not-found`, `stale-version`, `makegood-answered-already`, `makegood-reads-given-meanwhile`, and as what settles it does
   */
  async accept(id: string, version: number | null, { name, on, note, how }: Answer): Promise<void> {
    const { replacementReads, commitmentId } = await this.work.one(MakegoodProposal, id);
    if (replacementReads !== null) await this.places.hold(commitmentId);
    const proposal = await this.hold(id, version, 'open');
    await this.refuseGiven(proposal);
    await this.work.update(MakegoodProposal, id, null, { acceptedOn: on, answeredByName: name, answeredHow: how, answerNote: note });
    await this.settling.settle(proposal, { on, name, isAsked: false });
  }

  /** Withdrawn by the school; also what was agreed to be carried over, while no contract has come for it. @throws Refused as `accept` */
  async withdraw(id: string, version: number, changes: Partial<MakegoodProposal>): Promise<void> {
    const { state, makegoodId } = await this.work.one(MakegoodProposal, id);
    await this.end(id, version, changes, state === 'accepted' && makegoodId === null ? 'accepted' : 'open');
  }

  /** Declined or withdrawn: its missed reads are free for another proposal. @throws Refused as `accept` */
  async end(id: string, version: number | null, changes: Partial<MakegoodProposal>, from: 'open' | 'accepted' = 'open'): Promise<void> {
    await this.hold(id, version, from);
    await this.work.update(MakegoodProposal, id, null, changes);
    await this.work.remove(MissedReadRow, { proposalId: id });
  }

  /** @throws Refused `not-found`, `stale-version`, `makegood-settled-already`, `no-contract-follows`, `no-line-follows` */
  async settle(id: string, version: number, form: SettleProposalDto): Promise<void> {
    const proposal = await this.hold(id, version, 'accepted');
    if (proposal.makegoodId !== null) refuse('makegood-settled-already');
    await this.settling.settle(proposal, { on: await this.departments.today(), name: proposal.answeredByName!, isAsked: true, toLineId: form.toLineId ?? null, toGameId: form.toGameId ?? null });
  }

  /** Contracts, terms, then the proposal, in the order of whoever else locks them; the season's plan and its games were held before. */
  private async hold(id: string, version: number | null, state: 'open' | 'accepted'): Promise<MakegoodProposal> {
    const before = await this.work.one(MakegoodProposal, id);
    const next = before.remedy === 'carryOver' ? await this.rolled.nextOf(before.contractId) : null;
    await this.work.lock(Contract, [before.contractId, ...(next ? [next.contractId] : [])]);
    await this.work.lock(Term, [before.termId, ...(next ? [next.termId] : [])]);
    await this.work.lock(MakegoodProposal, [id]);
    const proposal = await this.work.one(MakegoodProposal, id);
    if (version !== null && proposal.version !== version) refuse('stale-version');
    if (proposal.state !== state) refuse(state === 'open' ? 'makegood-answered-already' : 'makegood-settled-already', { state: proposal.state });
    return proposal;
  }

  private async refuseGiven({ id, termId, commitmentId, missedGameId, missedReads }: MakegoodProposal): Promise<void> {
    const position = (await this.terms.position(termId)) ?? refuse('contract-not-signed');
    const line = lineOf(position, commitmentId);
    const { gameId } = await this.games.of(position, commitmentId, missedGameId);
    const slot = line.slots.find((one) => one.gameId === gameId);
    const [waiting] = await this.work.sql<{ reads: number }>(WAITING, [commitmentId, id, missedGameId]);
    const owed = slot ? readsOfSlot(line, slot).owed - awaitingIn(slot) - waiting!.reads : 0;
    const [given] = await this.work.sql<{ reads: number }>(GIVEN_SINCE, [id]);
    const left = Math.min(missedReads - given!.reads, Math.max(0, owed));
    if (left < missedReads) refuse('makegood-reads-given-meanwhile', { missed: missedReads, left });
  }
}
