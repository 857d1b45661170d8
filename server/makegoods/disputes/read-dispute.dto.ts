import type { Day } from '../../domain/day.ts';
import { DISPUTE_OUTCOMES } from '../../domain/makegoods/dispute.ts';
import type { DisputeOutcome } from '../../domain/makegoods/dispute.ts';
import { ChoiceField, CountField, IdField, TextField } from '../../platform/http/fields.ts';
import { ListQuery } from '../../platform/http/lists.ts';

const OPEN = { optional: true, nullable: true };

/** About a read that was given: its entry. About one that is missed: the commitment and the night. */
export class AskAboutReadDto {
  @IdField(OPEN) entryId?: string | null;
  @CountField(0, 2_000_000, { optional: true }) occurrence?: number;
  @IdField(OPEN) commitmentId?: string | null;
  @IdField(OPEN) nightId?: string | null;
  @TextField(1, 120) name: string;
  @TextField(1, 1000) what: string;
}

export class AnswerDisputeDto {
  @ChoiceField(DISPUTE_OUTCOMES) outcome: DisputeOutcome;
  /** what the sponsor is told */
  @TextField(1, 1000) answer: string;
  /** a read that is added: in which game, where its night has several */
  @IdField(OPEN) gameId?: string | null;
}

export class ReadDisputeListQuery extends ListQuery {
  @IdField({ optional: true }) contractId?: string;
  @ChoiceField(['open', 'answered'], { optional: true }) state?: 'open' | 'answered';
}

export interface ReadDisputeView {
  id: string;
  sponsorId: string;
  sponsorName: string;
  contractId: string;
  contractNumber: string | null;
  commitmentId: string;
  readKindName: string;
  nightId: string;
  heldOn: Day;
  gameId: string | null;
  gameLabel: string | null;
  windowKey: string | null;
  windowName: string | null;
  /** null where the sponsor misses a read that the log does not have */
  entryId: string | null;
  occurrence: number;
  askedByName: string;
  what: string;
  askedAt: string;
  state: 'open' | 'answered';
  outcome: DisputeOutcome | null;
  answer: string | null;
  answeredByName: string | null;
  answeredAt: string | null;
  version: number;
}

/** The same for the sponsor: nobody of the school by name. */
export type DisputeForSponsor = Pick<
  ReadDisputeView,
  'id' | 'contractId' | 'commitmentId' | 'readKindName' | 'nightId' | 'heldOn' | 'gameLabel' | 'windowName' | 'entryId' | 'occurrence' | 'askedByName' | 'what' | 'askedAt' | 'outcome' | 'answer' | 'answeredAt'
>;
