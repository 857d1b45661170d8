import { CreditMemoList } from './list.tsx';
import { CreditMemoShow } from './show.tsx';

export const creditMemos = { name: 'credit-memos', list: CreditMemoList, show: CreditMemoShow, recordRepresentation: 'number' };
