import { NightLockController } from '../locks/night-lock.controller.ts';
import { NightLock } from '../locks/night-lock.entity.ts';
import { NightLocks } from '../locks/night-locks.service.ts';
import { HeldPlace } from './held-place.entity.ts';
import { PlanAcceptance } from './plan-acceptance.service.ts';
import { PlanProposalController } from './plan-proposal.controller.ts';
import { PlanProposal } from './plan-proposal.entity.ts';
import { PlanProposals } from './plan-proposals.service.ts';
import { PlanSolving } from './plan-solving.service.ts';
import { PlanWriter } from './plan-writer.service.ts';
import { ProposalViews } from './proposal-views.service.ts';
import { SeasonPlanController } from './season-plan.controller.ts';
import { SeasonPlanViews } from './season-plan-view.service.ts';
import { SeasonPlans } from './season-plans.service.ts';

/** What proposing and accepting a plan, and locking its nights, brings to the room. */
export const proposalEntities = [PlanProposal, HeldPlace, NightLock];
export const proposalControllers = [PlanProposalController, SeasonPlanController, NightLockController];
export const proposalProviders = [SeasonPlans, PlanWriter, PlanSolving, PlanProposals, PlanAcceptance, ProposalViews, SeasonPlanViews, NightLocks];
