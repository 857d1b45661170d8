import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../../domain/day.ts';
import { proposalInWords, settledByReplacement } from '../../domain/makegoods/proposal.ts';
import { windowHeading } from '../../domain/planning/words/window.ts';
import { refuse } from '../../domain/refusals.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Conditions, contains, pageOf } from '../../platform/http/lists.ts';
import type { Listed } from '../../platform/http/lists.ts';
import type {
  MakegoodProposalLine, MakegoodProposalListQuery, MakegoodProposalView, MissedReadTrace, ProposalForSponsor, ReadThatSettles,
} from './makegood-proposal.dto.ts';
import { HANDED_ON, MISSED, PROPOSALS, REPLACEMENTS } from './proposal.sql.ts';

const SORTS = {
  proposedOn: '"proposedOn"', sponsorName: '"sponsorName" collate "und-x-icu"', contractNumber: '"contractNumber"', missedReads: '"missedReads"',
  answerBy: '"answerBy"', standing: 'standing', remedy: 'remedy', amountCents: '"amountCents"',
};

type ProposalRow = Omit<MakegoodProposalLine, 'words'> & { department: string };
type MissedRow = Omit<MissedReadTrace, 'settledBy' | 'windowName'> & { proposalId: string };
type ReplacementRow = Omit<ReadThatSettles, 'windowName'> & { makegoodId: string };

/** Proposals as pages show them, and each missed read from its night to what settled it. */
@Injectable()
export class MakegoodProposalViews {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async list(query: MakegoodProposalListQuery): Promise<Listed<MakegoodProposalLine>> {
    const { where, parameters } = new Conditions('line.department')
      .add('line."contractId" = ?', query.contractId)
      .add('line."sponsorId" = ?', query.sponsorId)
      .add('line.standing = ?', query.standing)
      .add('line.id = any(?::uuid[])', query.id)
      .add(`(line."sponsorName" ilike ? or line."contractNumber" ilike ? or line."readKindName" ilike ?)`, contains(query.q));
    const rows = await this.work.sql<ProposalRow>(`${PROPOSALS} where ${where} ${pageOf({ ...query, sort: query.sort ?? '-proposedOn' }, SORTS)}`, parameters);
    const [count] = await this.work.sql<{ total: number }>(`select count(*)::int as total from (${PROPOSALS} where ${where}) as found`, parameters);
    return { data: rows.map(lineOf), total: count!.total };
  }

  /** @throws Refused `not-found` */
  async one(id: string): Promise<MakegoodProposalView> {
    const [row] = isId(id) ? await this.work.sql<ProposalRow>(`${PROPOSALS} where line.id = $2`, [id]) : [];
    const [view] = await this.traced(row ? [row] : []);
    return view ?? refuse('not-found');
  }

  /** Those of a contract, each traced, the latest first. */
  async ofContract(contractId: string): Promise<MakegoodProposalView[]> {
    return this.traced(await this.work.sql<ProposalRow>(`${PROPOSALS} where line."contractId" = $2 order by "proposedOn" desc, id desc`, [contractId]));
  }

  /** What a sponsor was shown and what became of it; what was withdrawn is no longer shown. */
  async ofSponsor(sponsorId: string): Promise<ProposalForSponsor[]> {
    const rows = await this.work.sql<ProposalRow>(`${PROPOSALS} where line."sponsorId" = $2 and line."shownOn" is not null and line."withdrawnOn" is null order by "shownOn" desc, id desc`, [sponsorId]);
    const handedOn = new Map((await this.work.sql<{ contractId: string; lastOn: Day }>(HANDED_ON, [rows.map((row) => row.contractId), sponsorId])).map((row) => [row.contractId, row.lastOn]));
    return (await this.traced(rows)).map((view) => forSponsor(view, handedOn.get(view.contractId) ?? null));
  }

  private async traced(rows: readonly ProposalRow[]): Promise<MakegoodProposalView[]> {
    if (rows.length === 0) return [];
    const missed = await this.work.sql<MissedRow>(MISSED, [rows.map((row) => row.id)]);
    const given = await this.work.sql<ReplacementRow>(REPLACEMENTS, [rows.flatMap((row) => row.makegoodId ?? [])]);
    return rows.map((row) => {
      const replacements = given.filter((one) => one.makegoodId === row.makegoodId).slice(0, row.replacementReads ?? 0).map(readOf);
      const of = missed.filter((one) => one.proposalId === row.id);
      return { ...lineOf(row), replacements, missed: of.map((one) => traceOf(one, row, replacements)) };
    });
  }
}

function lineOf({ department: _department, ...row }: ProposalRow): MakegoodProposalLine {
  return { ...row, words: proposalInWords(row) };
}

function readOf({ makegoodId: _makegoodId, ...read }: ReplacementRow): ReadThatSettles {
  return { ...read, windowName: read.windowKey === null ? null : windowHeading(read.windowKey) };
}

function traceOf({ proposalId: _proposalId, ...read }: MissedRow, row: ProposalRow, replacements: readonly ReadThatSettles[]): MissedReadTrace {
  const at = row.replacementReads === null ? 0 : settledByReplacement(read.place, row.missedReads, row.replacementReads);
  return { ...read, windowName: read.windowKey === null ? null : windowHeading(read.windowKey), settledBy: replacements[at - 1] ?? null };
}

/** @param handedOn the last day on which the contract was another sponsor's: whoever answered by then is nobody of this one's */
function forSponsor(view: MakegoodProposalView, handedOn: Day | null): ProposalForSponsor {
  const { id, contractId, contractTitle, words, standing, remedy, readKindName, missedReads, replacementReadKindName, replacementReads, given, amountCents, answerBy } = view;
  const answeredOn = view.acceptedOn ?? view.declinedOn;
  return {
    id, contractId, contractTitle, words, standing, remedy, readKindName, missedReads, replacementReadKindName, replacementReads, given, amountCents, answerBy, answeredOn,
    answeredByName: handedOn !== null && answeredOn !== null && answeredOn <= handedOn ? null : view.answeredByName,
    shownOn: view.shownOn!,
    answer: view.acceptedOn !== null ? 'accept' : view.declinedOn !== null ? 'decline' : null,
    missed: view.missed.map(({ missedOn, gameLabel, windowName, why, settledBy }) => ({ missedOn, gameLabel, windowName, why, settledOn: settledBy?.heldOn ?? view.settledOn })),
  };
}
