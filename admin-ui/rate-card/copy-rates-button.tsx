import { CommandButton } from '../forms/command-button.tsx';
import { FormGrid } from '../forms/form-grid.tsx';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { DecimalInput } from '../inputs/decimal-input.tsx';
import type { Season } from '../seasons/types.ts';

/** Another season's prices, so much higher, for what has none here. */
export const CopyRatesButton = ({ to, from }: { to: Season; from: Season[] }) => (
  <CommandButton
    label="Copy another season’s prices"
    title={`Copy prices to ${to.name}`}
    explains="What has a price here already keeps it. Contracts and offers that are written down keep the prices they were written with."
    path="/rate-card-lines/copies"
    defaults={{ fromSeasonId: from[0]!.id, increasePercent: 0 }}
    body={({ fromSeasonId, increasePercent }) => ({ fromSeasonId, toSeasonId: to.id, increaseBasisPoints: Math.round(Number(increasePercent ?? 0) * 100) })}
    confirmLabel="Copy the prices"
    success="The prices are copied."
  >
    <FormGrid>
      <ChoiceInput source="fromSeasonId" label="From" choices={from.map(({ id, name }) => ({ id, name }))} required />
      <DecimalInput source="increasePercent" label="Higher by, percent" max={100} />
    </FormGrid>
  </CommandButton>
);
