import { Tag } from '../fields/tag.tsx';
import type { PlanProposalLine } from './types.ts';

type State = PlanProposalLine['state'];

const STATES: Record<State, { words: string; mood: 'good' | 'plain' | 'care' }> = {
  solving: { words: 'Being worked out', mood: 'plain' },
  proposed: { words: 'To decide', mood: 'care' },
  failed: { words: 'No plan', mood: 'care' },
  cancelled: { words: 'Cancelled', mood: 'plain' },
  accepted: { words: 'Accepted', mood: 'good' },
  discarded: { words: 'Discarded', mood: 'plain' },
};

export const ProposalState = ({ state }: { state: State }) => <Tag mood={STATES[state].mood}>{STATES[state].words}</Tag>;

export const KIND_WORDS: Record<PlanProposalLine['kind'], string> = { plan: 'Plan anew', replan: 'Replan with the fewest moves' };
