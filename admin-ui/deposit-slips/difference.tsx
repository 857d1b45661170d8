import { Tag } from '../fields/tag.tsx';
import { moneyText } from '../format/money.ts';

/** Over or short, in words. */
export function Difference({ cents }: { cents: number }) {
  if (cents === 0) return <Tag mood="good">To the cent</Tag>;
  return <Tag mood="bad">{`${moneyText(Math.abs(cents))} ${cents > 0 ? 'over' : 'short'}`}</Tag>;
}
