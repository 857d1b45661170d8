import { MakegoodProposalList } from './list.tsx';
import { MakegoodProposalShow } from './show.tsx';

export const makegoodProposals = { name: 'makegood-proposals', list: MakegoodProposalList, show: MakegoodProposalShow, recordRepresentation: 'words' };
