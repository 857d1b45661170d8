import { newId } from '../server/platform/database/ids.ts';
import { PlanAcceptance } from '../server/planning/proposals/plan-acceptance.service.ts';
import { PlanProposals } from '../server/planning/proposals/plan-proposals.service.ts';
import { ProposalViews } from '../server/planning/proposals/proposal-views.service.ts';
import type { Story } from './story.ts';

const LONGEST_WAIT_MILLISECONDS = 60_000;

/** The director asks for a plan, looks at it and accepts it. */
export async function tellPlan(story: Story, seasonId: string, because: string): Promise<void> {
  const id = newId();
  await story.today(() => story.of(PlanProposals).ask({ id, seasonId, kind: 'replan', because }));
  for (const until = Date.now() + LONGEST_WAIT_MILLISECONDS; ; await new Promise((done) => setTimeout(done, 50))) {
    const { state, version, failure } = await story.today(() => story.of(ProposalViews).one(id));
    if (state === 'proposed') return story.today(() => story.of(PlanAcceptance).accept(id, version, 'Both know that the nights before the tournament are full'));
    if (state !== 'solving' || Date.now() > until) throw new Error(`the plan of the demo is ${state}: ${failure ?? 'no reason is said'}`);
  }
}
