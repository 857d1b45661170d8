import { CommandButton } from '../forms/command-button.tsx';
import { today } from '../format/day.ts';
import { CountInput } from '../inputs/count-input.tsx';
import { DayInput } from '../inputs/day-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import type { Benefit, Contract } from './types.ts';

/** A banner was hung, a page was printed. */
export const DeliverButton = ({ contract, benefit }: { contract: Contract; benefit: Benefit }) => (
  <CommandButton
    label="Record delivery"
    title={`Delivery of ${benefit.name}`}
    explains="What is delivered counts for the sponsor, and its money is earned."
    path={`/contracts/${contract.id}/benefits/${benefit.id}/deliveries`}
    defaults={{ deliveredOn: today(), quantity: benefit.quantity - (benefit.delivered ?? 0) }}
    success="The delivery is recorded."
    variant="text"
  >
    <DayInput source="deliveredOn" label="Delivered on" required />
    <CountInput source="quantity" label="How many" min={1} required />
    <WordsInput source="proof" label="Proof" longest={500} required helperText="A photograph’s name, the printed page, who saw it" />
  </CommandButton>
);
