import type { Day } from '../../domain/day.ts';
import type { ProposalBecause, ProposalStanding } from '../../domain/makegoods/proposal.ts';
import { PROPOSAL_STANDINGS } from '../../domain/makegoods/proposal.ts';
import { REMEDIES } from '../../domain/makegoods/repair-options.ts';
import type { Remedy } from '../../domain/makegoods/repair-options.ts';
import { ChoiceField, CountField, DayField, FlagField, IdField, ListOf, OptionalTextField, TextField } from '../../platform/http/fields.ts';
import { ListQuery } from '../../platform/http/lists.ts';

const OPEN = { optional: true, nullable: true };

export class MissedReadDto {
  /** as the list of missed reads names it */
  @TextField(1, 200) key: string;
}

/** One remedy for missed reads of one commitment; of one game where it is counted by the game. */
export class ProposeMakegoodDto {
  @IdField({ optional: true }) id?: string;
  @IdField() contractId: string;
  @IdField() commitmentId: string;
  @ListOf(() => MissedReadDto, { least: 1, most: 500 }) missed: MissedReadDto[];
  @ChoiceField(REMEDIES) remedy: Remedy;
  /** another kind of read: which */
  @IdField(OPEN) replacementReadKindId?: string | null;
  /** without it, as few as are worth no less than the missed ones */
  @CountField(1, 1000, OPEN) replacementReads?: number | null;
  /** a credit where the sponsor pays in goods */
  @FlagField({ optional: true }) insists?: boolean;
  @DayField(OPEN) proposedOn?: string | null;
  /** the sponsor sees it by its link at once */
  @FlagField({ optional: true }) isShown?: boolean;
  @DayField(OPEN) answerBy?: string | null;
  @OptionalTextField(500) note?: string | null;
}

export class ShowProposalDto {
  @DayField(OPEN) answerBy?: string | null;
}

/** What the sponsor said, recorded by the director. */
export class RecordAnswerDto {
  @TextField(1, 120) name: string;
  @DayField(OPEN) on?: string | null;
  @OptionalTextField(500) note?: string | null;
}

export class WithdrawProposalDto {
  @OptionalTextField(500) note?: string | null;
}

/** Where the carried reads go on; without it, on the line of the next contract that stands for this one. */
export class SettleProposalDto {
  @IdField(OPEN) toLineId?: string | null;
  /** where that line is counted by the game */
  @IdField(OPEN) toGameId?: string | null;
}

/** What a sponsor says by its link. */
export class AnswerByLinkDto {
  @TextField(1, 120) name: string;
  @ChoiceField(['accept', 'decline']) answer: 'accept' | 'decline';
  @OptionalTextField(500) note?: string | null;
}

export class MakegoodProposalListQuery extends ListQuery {
  @IdField({ optional: true }) contractId?: string;
  @IdField({ optional: true }) sponsorId?: string;
  @ChoiceField(PROPOSAL_STANDINGS, { optional: true }) standing?: ProposalStanding;
}

/** Where a read was given: the night, and which one. */
export interface ReadThatSettles {
  entryId: string;
  nightId: string;
  heldOn: Day;
  gameId: string;
  gameLabel: string | null;
  windowKey: string | null;
  windowName: string | null;
}

/** A missed read from its night to what settled it. */
export interface MissedReadTrace {
  /** the order in which they were missed */
  place: number;
  nightId: string | null;
  gameId: string | null;
  gameLabel: string | null;
  windowKey: string | null;
  windowName: string | null;
  missedOn: Day;
  why: string;
  /** the replacement that settled it; null where it is still to come, or settled otherwise */
  settledBy: ReadThatSettles | null;
}

export interface MakegoodProposalLine {
  id: string;
  contractId: string;
  contractNumber: string | null;
  contractTitle: string;
  sponsorId: string;
  sponsorName: string;
  commitmentId: string;
  readKindId: string;
  readKindName: string;
  missedGameId: string | null;
  missedReads: number;
  because: ProposalBecause;
  remedy: Remedy;
  replacementReadKindId: string | null;
  replacementReadKindName: string | null;
  replacementReads: number | null;
  amountCents: number | null;
  proposedOn: Day;
  shownOn: Day | null;
  answerBy: Day | null;
  acceptedOn: Day | null;
  declinedOn: Day | null;
  withdrawnOn: Day | null;
  answeredByName: string | null;
  answeredHow: 'link' | 'recordedByDirector' | null;
  answerNote: string | null;
  note: string | null;
  makegoodId: string | null;
  carriedToContractId: string | null;
  carriedToNumber: string | null;
  creditMemoId: string | null;
  creditMemoNumber: string | null;
  settledOn: Day | null;
  standing: ProposalStanding;
  /** replacements that have a place on a night to come or were given */
  placed: number;
  /** replacements given so far */
  given: number;
  /** missed reads that are settled */
  settledReads: number;
  /** what is proposed, in one sentence */
  words: string;
  version: number;
}

export interface MakegoodProposalView extends MakegoodProposalLine {
  missed: MissedReadTrace[];
  /** the reads given for it, in the order in which they were counted */
  replacements: ReadThatSettles[];
}

/** An agreed makegood, each missed read with the read that settled it. */
export interface MakegoodTrace {
  makegoodId: string;
  /** null where it was agreed without one */
  proposalId: string | null;
  missed: { place: number; missedOn: Day | null; settledBy: ReadThatSettles | null }[];
  replacements: ReadThatSettles[];
}

/** A proposal as the sponsor sees it by its link. */
export interface ProposalForSponsor {
  id: string;
  contractId: string;
  contractTitle: string;
  words: string;
  standing: ProposalStanding;
  remedy: Remedy;
  readKindName: string;
  missedReads: number;
  missed: { missedOn: Day; gameLabel: string | null; windowName: string | null; why: string; settledOn: Day | null }[];
  replacementReadKindName: string | null;
  replacementReads: number | null;
  given: number;
  amountCents: number | null;
  shownOn: Day;
  answerBy: Day | null;
  answeredOn: Day | null;
  answer: 'accept' | 'decline' | null;
  answeredByName: string | null;
}
