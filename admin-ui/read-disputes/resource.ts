import { ReadDisputeList } from './list.tsx';
import { ReadDisputeShow } from './show.tsx';

export const readDisputes = { name: 'read-disputes', list: ReadDisputeList, show: ReadDisputeShow, recordRepresentation: 'what' };
