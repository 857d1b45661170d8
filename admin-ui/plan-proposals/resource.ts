import { PlanProposalList } from './list.tsx';
import { PlanProposalShow } from './show.tsx';

export const planProposals = { name: 'plan-proposals', list: PlanProposalList, show: PlanProposalShow, recordRepresentation: 'seasonName' };
