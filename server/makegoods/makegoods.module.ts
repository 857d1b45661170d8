import { Module } from '@nestjs/common';
import { BillingModule } from '../billing/billing.module.ts';
import { NightModule } from '../night/night.module.ts';
import { PlanningModule } from '../planning/planning.module.ts';
import { SponsorshipModule } from '../sponsorship/sponsorship.module.ts';
import { DisputeAmending } from './disputes/dispute-amending.service.ts';
import { ReadDisputeViews } from './disputes/dispute-views.service.ts';
import { ReadDisputeController } from './disputes/read-dispute.controller.ts';
import { ReadDispute } from './disputes/read-dispute.entity.ts';
import { ReadDisputes } from './disputes/read-disputes.service.ts';
import { MakegoodProposalController } from './proposals/makegood-proposal.controller.ts';
import { MakegoodProposal } from './proposals/makegood-proposal.entity.ts';
import { MakegoodProposals } from './proposals/makegood-proposals.service.ts';
import { MakegoodTraces } from './proposals/makegood-traces.service.ts';
import { MissedReadRow } from './proposals/missed-read.entity.ts';
import { ProposalAnswers } from './proposals/proposal-answers.service.ts';
import { ProposalMaking } from './proposals/proposal-making.service.ts';
import { ProposalSettling } from './proposals/proposal-settling.service.ts';
import { MakegoodProposalViews } from './proposals/proposal-views.service.ts';
import { ReplacementPlaces } from './proposals/replacement-places.service.ts';
import { OpenShortfalls } from './shortfalls/open-shortfalls.service.ts';
import { ShortfallController } from './shortfalls/shortfall.controller.ts';
import { ShortfallRows } from './shortfalls/shortfall-rows.service.ts';
import { Shortfalls } from './shortfalls/shortfalls.service.ts';

export const makegoodEntities = [MakegoodProposal, MissedReadRow, ReadDispute];

const shortfalls = [ShortfallRows, Shortfalls, OpenShortfalls];
const proposals = [MakegoodProposals, MakegoodProposalViews, MakegoodTraces, ProposalMaking, ProposalAnswers, ProposalSettling, ReplacementPlaces];
const disputes = [ReadDisputes, ReadDisputeViews, DisputeAmending];

@Module({
  imports: [SponsorshipModule, BillingModule, PlanningModule, NightModule],
  controllers: [ShortfallController, MakegoodProposalController, ReadDisputeController],
  providers: [...shortfalls, ...proposals, ...disputes],
  exports: [...shortfalls, ...proposals, ...disputes],
})
export class MakegoodsModule {}
