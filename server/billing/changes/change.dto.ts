import type { ContractAmounts } from '../../domain/sponsorship/contract-amounts.ts';
import type { LineEffect } from '../../domain/sponsorship/change-effect.ts';
import type { Posting } from '../../domain/ledger/posting.ts';
import type { PostingSentence } from '../../domain/sponsorship/posting-words.ts';
import { CompanyExceptionDto } from '../../sponsorship/company/company.dto.ts';
import { CentsField, CountField, DayField, FlagField, IdField, ListOf, OptionalTextField, TextField, RecordField } from '../../platform/http/fields.ts';
import { MOST_CENTS, MOST_READS } from '../../sponsorship/amounts.ts';
import { BenefitDto, CommitmentDto } from '../../sponsorship/contract-line.dto.ts';

const OPEN = { optional: true, nullable: true };

/** On which day it happens (today where none is named) and why; the reason stands on a memo. */
class ChangeDto {
  @DayField(OPEN) on?: string | null;
  @OptionalTextField(500) reason?: string | null;
}

export class ChangedLineDto {
  /** a commitment or another benefit of the contract */
  @IdField() lineId: string;
  /** a line counted game by game: the game whose reads change */
  @IdField(OPEN) gameId?: string | null;
  @CountField(-MOST_READS, MOST_READS) reads: number;
  @CentsField({ least: -MOST_CENTS, most: MOST_CENTS }) priceCents: number;
}

export class NewCommitmentDto extends CommitmentDto {
  /** what the line adds to the price */
  @CentsField({ most: MOST_CENTS }) priceCents: number;
}

export class NewBenefitDto extends BenefitDto {
  @CentsField({ most: MOST_CENTS }) priceCents: number;
}

/** Several lines at once, and new ones; a single line may stand in the form itself. */
export class AmendContractDto extends ChangeDto {
  @IdField({ optional: true }) commitmentId?: string;
  @IdField(OPEN) gameId?: string | null;
  @CountField(-MOST_READS, MOST_READS, { optional: true }) reads?: number;
  @CentsField({ least: -MOST_CENTS, most: MOST_CENTS }, { optional: true }) priceCents?: number;
  @DayField(OPEN) amendedOn?: string | null;
  @ListOf(() => ChangedLineDto, { most: 100 }, { optional: true }) changes?: ChangedLineDto[];
  @ListOf(() => NewCommitmentDto, { most: 100 }, { optional: true }) newCommitments?: NewCommitmentDto[];
  @ListOf(() => NewBenefitDto, { most: 100 }, { optional: true }) newBenefits?: NewBenefitDto[];
}

export class SwapReadsDto extends ChangeDto {
  @IdField() fromLineId: string;
  @CountField(1, MOST_READS) fromReads: number;
  @IdField() toLineId: string;
  @CountField(1, MOST_READS) toReads: number;
  /** what the swap adds to the price; below zero it lowers it */
  @CentsField({ least: -MOST_CENTS, most: MOST_CENTS }, { optional: true }) priceCents?: number;
}

export class LowerPriceDto extends ChangeDto {
  @CentsField({ least: 1, most: MOST_CENTS }) byCents: number;
}

export class EndContractDto extends ChangeDto {
  @CentsField({ most: MOST_CENTS }, { optional: true }) feeCents?: number;
  /** priced by the read: whether the least amount agreed is still billed */
  @FlagField({ optional: true }) keepsMinimum?: boolean;
}

export class CloseContractDto {
  @DayField(OPEN) on?: string | null;
}

export class ReopenContractDto {
  @DayField(OPEN) on?: string | null;
}

export class HoldContractDto {
  @DayField(OPEN) on?: string | null;
  @TextField(1, 500) reason: string;
}

export class LiftHoldDto {
  @DayField(OPEN) on?: string | null;
  @TextField(1, 500) reason: string;
}

export class AssignContractDto {
  @DayField(OPEN) on?: string | null;
  @TextField(1, 500) reason: string;
  @IdField() toSponsorId: string;
  @IdField() toPayerId: string;
  /** where the new owner's category is blocked: why it is let through this once, and who said so */
  @OptionalTextField(500) categoryException?: string | null;
  @OptionalTextField(120) categoryExceptionApprovedBy?: string | null;
  /** whose right is gone past this once, and who said so */
  @RecordField(() => CompanyExceptionDto, { optional: true, nullable: true }) companyException?: CompanyExceptionDto | null;
}

export class CarryReadsDto extends ChangeDto {
  @IdField() toContractId: string;
  @IdField() lineId: string;
  @IdField(OPEN) gameId?: string | null;
  @CountField(1, MOST_READS) count: number;
  @IdField() toLineId: string;
  @IdField(OPEN) toGameId?: string | null;
}

/** The dollars of a contract and what is open on its invoices, in cents. */
export interface AmountsView extends ContractAmounts {
  receivableCents: number;
}

export interface MemoPreview {
  netCents: number;
  taxCents: number;
  grossCents: number;
  parts: { invoiceNumber: string | null; netCents: number; taxCents: number }[];
}

/** One contract before and after a change, on both ledgers. */
export interface ContractChangeView {
  contractId: string;
  number: string | null;
  title: string;
  lines: LineEffect[];
  before: AmountsView;
  after: AmountsView;
  /** what would be posted, and the same in words */
  postings: Pick<Posting, 'journal' | 'from' | 'to' | 'amount'>[];
  sentences: PostingSentence[];
  memos: MemoPreview[];
}

/** What a change would do; nothing is done. */
export interface ChangePreview {
  on: string;
  /** the contract, and the other one where reads are carried over */
  contracts: ContractChangeView[];
  cautions: string[];
  /** why it would be refused; then there is nothing else to see */
  refusal: { code: string; sentence: string } | null;
}
