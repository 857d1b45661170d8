import { Button } from '@mui/material';
import { useGetList, useWrappedSource } from 'react-admin';
import { useFormContext, useWatch } from 'react-hook-form';
import { moneyText } from '../../format/money.ts';
import type { RateCardLine } from '../../rate-card/types.ts';

export const RateButton = ({ priceCents, onTake }: { priceCents: number; onTake: () => void }) => (
  <Button variant="text" onClick={onTake}>
    Take {moneyText(priceCents)} from the rate card
  </Button>
);

/** Offers the price on the rate card of the season for the read kind chosen. */
export function RateFromCard() {
  const rate = useWrappedSource('rateCents');
  const [readKindId, typed] = useWatch({ name: [useWrappedSource('readKindId'), rate] }) as [string | undefined, number | undefined];
  const seasonId = useWatch({ name: 'term.seasonId' }) as string | undefined;
  const { setValue } = useFormContext();
  const { data = [] } = useGetList<RateCardLine>('rate-card-lines', { filter: { seasonId }, pagination: { page: 1, perPage: 100 }, sort: { field: 'priceCents', order: 'DESC' } }, { enabled: Boolean(seasonId) });
  const line = data.find((one) => one.readKindId === readKindId);
  if (!line || line.priceCents === typed) return null;
  return <RateButton priceCents={line.priceCents} onTake={() => setValue(rate, line.priceCents, { shouldDirty: true, shouldValidate: true })} />;
}
