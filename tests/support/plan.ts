import type { Visitor } from './visitor.ts';

const LOOK_EVERY_MILLISECONDS = 25;
const LOOKS = 1200;

/** The proposal once it is no longer being worked out. */
export async function solved(director: Visitor, id: string): Promise<any> {
  for (let look = 0; look < LOOKS; look += 1) {
    const proposal = await director.look(`/api/plan-proposals/${id}`);
    if (proposal.state !== 'solving') return proposal;
    await new Promise((resolve) => setTimeout(resolve, LOOK_EVERY_MILLISECONDS));
  }
  throw new Error(`the plan ${id} is still being worked out`);
}

/** A plan in places that is asked for and worked out. */
export async function aProposal(director: Visitor, seasonId: string, form: Record<string, unknown> = {}): Promise<any> {
  const asked = await director.make('/api/plan-proposals', { seasonId, kind: 'plan', withSeconds: false, ...form });
  return solved(director, asked.id);
}

export async function accepted(director: Visitor, proposal: { id: string; version: number }, form: Record<string, unknown> = {}): Promise<any> {
  const answer = await director.post(`/api/plan-proposals/${proposal.id}/accept`, form, { version: proposal.version });
  if (answer.status !== 200) throw new Error(`the plan was refused: ${JSON.stringify(answer.body)}`);
  return answer.body;
}
