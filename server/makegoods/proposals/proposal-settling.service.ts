import { Inject, Injectable } from '@nestjs/common';
import { ContractChanges } from '../../billing/changes/contract-changes.service.ts';
import { HandingOn } from '../../billing/changes/handing-on.service.ts';
import { ContractCredits } from '../../billing/credits/contract-credits.service.ts';
import type { Day } from '../../domain/day.ts';
import { creditedValueOf } from '../../domain/makegoods/repair-options.ts';
import { amountText, centsOf } from '../../domain/money.ts';
import { refuse } from '../../domain/refusals.ts';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { LineGames } from '../../sponsorship/line-games.service.ts';
import { MakegoodService } from '../../sponsorship/makegoods/makegood.service.ts';
import { RolledContracts } from '../../sponsorship/rollover/rolled-contracts.service.ts';
import { MakegoodProposal } from './makegood-proposal.entity.ts';
import { ReplacementPlaces } from './replacement-places.service.ts';

export interface HowToSettle {
  on: Day;
  /** who agreed */
  name: string;
  /** somebody asks for it now; else a carry-over that finds no contract to go into waits */
  isAsked: boolean;
  toLineId?: string | null;
  toGameId?: string | null;
}

/** Does what was agreed: other reads with their places, a credit, or reads that go on into the next contract. */
@Injectable()
export class ProposalSettling {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(MakegoodService) private readonly makegoods: MakegoodService,
    @Inject(ReplacementPlaces) private readonly places: ReplacementPlaces,
    @Inject(ContractCredits) private readonly credits: ContractCredits,
    @Inject(ContractChanges) private readonly changes: ContractChanges,
    @Inject(HandingOn) private readonly handing: HandingOn,
    @Inject(LineGames) private readonly games: LineGames,
    @Inject(RolledContracts) private readonly rolled: RolledContracts,
  ) {}

  /** The caller holds the contract, its term and the proposal. */
  async settle(proposal: MakegoodProposal, how: HowToSettle): Promise<void> {
    if (proposal.remedy === 'credit') return this.credit(proposal, how);
    if (proposal.remedy === 'carryOver') return this.carry(proposal, how);
    return this.makeGood(proposal, how);
  }

  private async makeGood({ id, contractId, commitmentId, missedGameId, missedReads, replacementReadKindId, replacementReads }: MakegoodProposal, { on, name }: HowToSettle): Promise<void> {
    const makegoodId = newId();
    await this.makegoods.agree(contractId, {
      id: makegoodId, commitmentId, gameId: missedGameId, missed: missedReads, replacementReadKindId: replacementReadKindId!, replacements: replacementReads!, agreedOn: on, agreedWith: name,
    });
    await this.work.update(MakegoodProposal, id, null, { makegoodId });
    await this.places.place(makegoodId, commitmentId, replacementReadKindId!, replacementReads!);
  }

  /** @throws Refused `makegood-value-changed` where what was put in writing is no longer what the last reads are worth */
  private async credit({ id, contractId, termId, commitmentId, missedGameId, missedReads, amountCents }: MakegoodProposal, { on }: HowToSettle): Promise<void> {
    const count = missedReads;
    await this.credits.book(contractId, {
      on, givesBack: true, insists: true, reason: `${count === 1 ? '1 read that was' : `${count} reads that were`} missed`,
      happening: async (position, memoId) => {
        const nowCents = creditedValueOf(position, commitmentId, count);
        if (nowCents !== amountCents) refuse('makegood-value-changed', { now: amountText(centsOf(nowCents)), written: amountText(centsOf(amountCents ?? 0)) });
        return { kind: 'readsCredited', ...(await this.games.of(position, commitmentId, missedGameId)), count, memoId };
      },
    });
    await this.work.update(MakegoodProposal, id, null, { settledOn: on, settledEventId: await this.lastEvent(termId) });
  }

  private async carry({ id, contractId, termId, commitmentId, missedGameId, missedReads }: MakegoodProposal, { on, isAsked, toLineId, toGameId }: HowToSettle): Promise<void> {
    const next = await this.rolled.nextOf(contractId);
    const into = next?.state === 'signed' ? next : null;
    const lineId = toLineId ?? into?.lines.find((line) => line.lineId === commitmentId)?.nextLineId ?? null;
    if (!into || lineId === null) {
      if (isAsked) refuse(into ? 'no-line-follows' : 'no-contract-follows');
      return;
    }
    if (!isAsked && (await this.countsByGame(lineId))) return;
    const form = { toContractId: into.contractId, lineId: commitmentId, gameId: missedGameId, count: missedReads, toLineId: lineId, toGameId: toGameId ?? null, reason: 'Missed reads that go on into the next contract' };
    await this.changes.perform(contractId, this.handing.carry(form, on));
    await this.work.update(MakegoodProposal, id, null, { settledOn: on, settledEventId: await this.lastEvent(termId), carriedToContractId: into.contractId });
  }

  /** Then somebody has to say in which game they are owed. */
  private async countsByGame(lineId: string): Promise<boolean> {
    return (await this.work.sql(`select 1 from commitment where department_id = $1 and id = $2 and counting in ('perGame', 'perNight')`, [lineId])).length > 0;
  }

  /** The term is held, so the last of its events is the one just booked. */
  private async lastEvent(termId: string): Promise<string> {
    const [event] = await this.work.sql<{ id: string }>('select id from ledger_event where department_id = $1 and term_id = $2 and place is not null order by place desc limit 1', [termId]);
    return (event ?? refuse('not-found')).id;
  }
}
