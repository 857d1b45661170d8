import { Tag } from '../fields/tag.tsx';
import type { Month } from './types.ts';

const WORDS = { closed: 'Closed', open: 'Open', running: 'This month', ahead: 'Not begun' } as const;

export const MonthState = ({ month }: { month: Pick<Month, 'state' | 'isNext'> }) => (
  <Tag mood={month.state === 'closed' ? 'good' : month.isNext ? 'care' : 'plain'}>{month.isNext ? 'To be closed next' : WORDS[month.state]}</Tag>
);
