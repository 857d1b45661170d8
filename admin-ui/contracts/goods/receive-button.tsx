import { CommandButton } from '../../forms/command-button.tsx';
import { today } from '../../format/day.ts';
import { CountInput } from '../../inputs/count-input.tsx';
import { DayInput } from '../../inputs/day-input.tsx';
import { WordsInput } from '../../inputs/words-input.tsx';
import type { Goods, GoodsPromise } from './types.ts';

export const ReceiveButton = ({ goods, promise }: { goods: Goods; promise: GoodsPromise }) => (
  <CommandButton
    label="Record delivery"
    title={`Delivery of ${promise.what}`}
    explains="What came counts at its value when the contract was signed. It pays the price as an invoice would."
    path={`/contracts/${goods.contractId}/goods-deliveries`}
    defaults={{ receivedOn: today(), quantity: promise.missing }}
    body={(values) => ({ ...values, promiseId: promise.id })}
    success="The delivery is recorded."
    variant="text"
  >
    <DayInput source="receivedOn" label="Received on" required />
    <CountInput source="quantity" label="How many" min={1} max={promise.missing} required />
    <WordsInput source="proof" label="Proof" longest={300} required helperText="Who took it in, the number of the delivery note" />
  </CommandButton>
);
