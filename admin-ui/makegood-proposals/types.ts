export type { LineShortfall, OpenShortfall, MissedReadView as MissedRead } from '../../server/makegoods/shortfalls/shortfall.dto.ts';
export type { MakegoodProposalLine, MakegoodProposalView as MakegoodProposal, MakegoodTrace, MissedReadTrace, ReadThatSettles } from '../../server/makegoods/proposals/makegood-proposal.dto.ts';
export type { RepairOption } from '../../server/domain/makegoods/repair-options.ts';
