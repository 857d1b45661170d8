import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import type { Day } from '../../domain/day.ts';
import { becauseOf, checkMissed, readsInstead } from '../../domain/makegoods/proposal.ts';
import { carriedValueOf, creditedValueOf } from '../../domain/makegoods/repair-options.ts';
import { refuse } from '../../domain/refusals.ts';
import { lineOf } from '../../domain/sponsorship/line-of.ts';
import type { Position } from '../../domain/sponsorship/position.ts';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { ContractRecords } from '../../sponsorship/contract-records.service.ts';
import type { ContractRecord } from '../../sponsorship/contract-records.service.ts';
import { TermLedger } from '../../sponsorship/term-ledger.service.ts';
import type { LineShortfall, MissedReadView } from '../shortfalls/shortfall.dto.ts';
import { Shortfalls } from '../shortfalls/shortfalls.service.ts';
import type { ProposeMakegoodDto, ShowProposalDto } from './makegood-proposal.dto.ts';
import { MakegoodProposal } from './makegood-proposal.entity.ts';
import { MissedReadRow } from './missed-read.entity.ts';

const KIND = `select read_kind.timing, (select line.price_cents from rate_card_line as line
    where line.department_id = $1 and line.season_id = $3 and line.read_kind_id = read_kind.id limit 1) as "priceCents"
  from read_kind where read_kind.department_id = $1 and read_kind.id = $2`;

type Remedied = Pick<MakegoodProposal, 'replacementReadKindId' | 'replacementReads' | 'amountCents'>;

/** Puts a remedy for missed reads on the table. */
@Injectable()
export class ProposalMaking {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(ContractRecords) private readonly records: ContractRecords,
    @Inject(TermLedger) private readonly terms: TermLedger,
    @Inject(Shortfalls) private readonly shortfalls: Shortfalls,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  /**
   * @returns the id of the proposal
   * @throws Refused `contract-not-signed`, `unknown-commitment`, `unknown-missed-read`, `missed-read-claimed-twice`, `missed-reads-of-two-games`,
   *   `more-missed-than-owed`, `makegood-before-credit`, and as `readsInstead` does
   */
  async propose(form: ProposeMakegoodDto): Promise<string> {
    const record = await this.records.lock(form.contractId);
    const position = (await this.terms.position(record.term.id)) ?? refuse('contract-not-signed');
    const line = (await this.shortfalls.ofContract(record.contract.id)).find((one) => one.commitmentId === form.commitmentId) ?? refuse('unknown-commitment', {}, { commitmentId: 'is not of this contract' });
    const missed = missedNamed(line, form);
    const open = line.missed.filter((read) => read.slotId === missed[0]!.slotId && read.isOpen).length;
    checkMissed(missed, open);
    const today = await this.departments.today();
    const shownOn = form.isShown ? today : null;
    const id = form.id ?? newId();
    await this.work.insert(MakegoodProposal, {
      ...(await this.remedied(form, missed.length, line, position, record)),
      id, contractId: record.contract.id, termId: record.term.id, commitmentId: line.commitmentId,
      missedGameId: missed[0]!.slotId === null ? null : missed[0]!.gameId,
      missedReads: missed.length, because: becauseOf(missed, line.open > 0), remedy: form.remedy,
      proposedOn: (form.proposedOn as Day | null | undefined) ?? today, shownOn, answerBy: (form.answerBy as Day | null | undefined) ?? null, note: form.note ?? null,
    });
    await this.work.insert(MissedReadRow, missed.map(({ nightId, gameId, placementId, windowKey, missedOn, why }, at) => (
      { proposalId: id, commitmentId: line.commitmentId, place: at + 1, nightId, gameId, placementId, windowKey, missedOn, why }
    )));
    return id;
  }

  /** @throws Refused `not-found`, `stale-version`, `makegood-answered-already` */
  async show(id: string, version: number, { answerBy }: ShowProposalDto): Promise<void> {
    const { state, shownOn } = await this.work.one(MakegoodProposal, id);
    if (state !== 'open') refuse('makegood-answered-already', { state });
    await this.work.update(MakegoodProposal, id, version, { shownOn: shownOn ?? (await this.departments.today()), answerBy: (answerBy as Day | null | undefined) ?? null });
  }

  private async remedied(form: ProposeMakegoodDto, missed: number, line: LineShortfall, position: Position, { contract, term }: ContractRecord): Promise<Remedied> {
    const nothing = { replacementReadKindId: null, replacementReads: null, amountCents: null };
    if (form.remedy === 'credit') {
      if (contract.isInKind && !form.insists) refuse('makegood-before-credit', {}, { insists: 'is not said' });
      return { ...nothing, amountCents: creditedValueOf(position, line.commitmentId, missed) as never };
    }
    if (form.remedy === 'carryOver') return { ...nothing, amountCents: carriedValueOf(position, line.commitmentId, missed) as never };
    const kindId = form.remedy === 'moreReads' ? line.readKindId : (form.replacementReadKindId ?? refuse('makegood-of-nothing', {}, { replacementReadKindId: 'is missing' }));
    const [kind] = await this.work.sql<{ timing: string; priceCents: number | null }>(KIND, [kindId, term.seasonId]);
    const { timing, priceCents } = kind ?? refuse('unknown-read-kind');
    if (timing !== 'scheduled') refuse('makegood-kind-cannot-be-planned');
    const ownCents = lineOf(position, line.commitmentId).terms.rateCents;
    const reads = form.replacementReads ?? null;
    const isSame = kindId === line.readKindId;
    if (isSame && reads !== null && reads < missed) refuse('makegood-worth-less', { least: missed, missed: `${missed}` });
    const instead = isSame ? (reads ?? missed) : readsInstead({ missed, priceCents: ownCents, otherCents: priceCents, reads });
    return { replacementReadKindId: kindId, replacementReads: instead, amountCents: null };
  }
}

/** @throws Refused `unknown-missed-read`; the first missed come first, so that replacements settle them first */
function missedNamed(line: LineShortfall, { missed }: ProposeMakegoodDto): MissedReadView[] {
  const keys = new Set(missed.map((one) => one.key));
  const found = line.missed.filter((read) => keys.has(read.key));
  if (found.length < keys.size) refuse('unknown-missed-read');
  return found;
}
