import { Alert } from '@mui/material';
import { useMemo } from 'react';
import { useGetList } from 'react-admin';
import { useWatch } from 'react-hook-form';
import { FormPart } from '../../forms/form-grid.tsx';
import { moneyText } from '../../format/money.ts';
import type { Game } from '../../games/types.ts';
import type { ReadKind } from '../../read-kinds/types.ts';
import { ValueRows } from '../value-rows.tsx';
import { valuesOfForm, type FormLine, type FormTerm } from './values-of-form.ts';

const ALL = { page: 1, perPage: 500 };

/** What each line and each read is worth while the offer is written, by the rule that signing uses. */
export function ValuesPreview() {
  const [term, commitments, benefits, policy] = useWatch({ name: ['term', 'commitments', 'benefits', 'cancelledGamePolicy'] }) as [FormTerm | undefined, FormLine[] | undefined, FormLine[] | undefined, unknown];
  const seasonId = term?.seasonId;
  const { data: games } = useGetList<Game>('games', { filter: { seasonId }, pagination: ALL, sort: { field: 'startsAt', order: 'ASC' } }, { enabled: Boolean(seasonId) });
  const { data: kinds } = useGetList<ReadKind>('read-kinds', { pagination: ALL, sort: { field: 'name', order: 'ASC' } });
  const text = JSON.stringify([term, commitments, benefits, policy]);
  const found = useMemo(() => (games && kinds ? valuesOfForm(term, commitments ?? [], benefits ?? [], games, kinds) : null), [text, games, kinds]);
  if (found === null) return null;
  const total = found.values.reduce((sum, line) => sum + line.valueCents, 0);
  return (
    <FormPart title="What each read is worth" why="The price is shared over the lines by their rate-card prices, and evenly over the reads of a line. These are the amounts by which a missed read would be credited.">
      {found.trouble ? <Alert severity="info" icon={false}>{found.trouble}</Alert> : <ValueRows values={found.values} />}
      {!found.trouble && term?.pricing !== 'perRead' && <p role="status">The lines add up to {moneyText(total)}.</p>}
    </FormPart>
  );
}
