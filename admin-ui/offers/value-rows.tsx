import { moneyText } from '../format/money.ts';
import { Rows } from '../lists/rows.tsx';
import { count } from '../words/count.ts';
import type { OfferedLine } from './types.ts';
import { eachText } from './words.ts';

const NOUNS: Record<OfferedLine['per'], string> = { read: 'read', game: 'game', piece: 'piece', day: 'day' };

/** Lines with what each read, game or piece is worth; what they are worth together adds up to the price. */
export const ValueRows = ({ values, label = 'What each line is worth' }: { values: readonly OfferedLine[]; label?: string }) => (
  <Rows<OfferedLine>
    label={label}
    rows={values}
    keyOf={(line) => line.lineId}
    columns={[
      { label: 'Line', show: (line) => line.name },
      { label: 'Counted', numeric: true, show: (line) => count(line.count, NOUNS[line.per]) },
      { label: 'Each', numeric: true, show: eachText },
      { label: 'Together', numeric: true, show: (line) => (line.isPricedByRead ? 'as they are read' : moneyText(line.valueCents)) },
    ]}
  />
);
