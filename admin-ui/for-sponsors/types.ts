export type { ContactOfSchool, CopyOfSponsor, OfferToSponsor, SponsorPageView as SponsorPage, WordsOfSponsor } from '../../server/reports/sponsor-page/sponsor-page.dto.ts';
export type { BenefitOfSponsor, ContractOfSponsor, LineOfSponsor, ReadsOfSponsor } from '../../server/reports/sponsor-page/contracts-of-sponsor.dto.ts';
export type { CreditOfSponsor, DollarsWithSeller, InvoiceOfSponsor, MoneyOfSponsorView as MoneyOfSponsor, PaymentOfSponsor } from '../../server/reports/sponsor-page/money-of-sponsor.dto.ts';
export type { NightOfSponsor, NightsOfSponsorView as NightsOfSponsor, ReadOfSponsor } from '../../server/reports/sponsor-page/nights-of-sponsor.dto.ts';
export type { ProposalsOnPage, QuestionsOnPage } from '../../server/reports/sponsor-page/answers-of-sponsor.dto.ts';
export type { ProposalForSponsor as Proposal } from '../../server/makegoods/proposals/makegood-proposal.dto.ts';
export type { DisputeForSponsor as Question } from '../../server/makegoods/disputes/read-dispute.dto.ts';
