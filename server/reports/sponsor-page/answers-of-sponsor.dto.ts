import type { DisputeForSponsor } from '../../makegoods/disputes/read-dispute.dto.ts';
import type { ProposalForSponsor } from '../../makegoods/proposals/makegood-proposal.dto.ts';

export interface ProposalsOnPage {
  proposals: ProposalForSponsor[];
}

/** What the sponsor asked about its reads, and what it was told. */
export interface QuestionsOnPage {
  questions: DisputeForSponsor[];
}
