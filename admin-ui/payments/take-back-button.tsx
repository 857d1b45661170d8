import { CommandButton } from '../forms/command-button.tsx';
import { moneyText } from '../format/money.ts';
import { opensAgain } from './opens-again.ts';
import type { Application } from './types.ts';

export const TakeBackButton = ({ application }: { application: Application }) => (
  <CommandButton
    label="Take back"
    title={`Take ${moneyText(application.amountCents)} back from invoice ${application.invoiceNumber}?`}
    explains={`The invoice is unpaid by this amount again, and the amount waits as the payer’s credit.${opensAgain([application])}`}
    path={`/applications/${application.id}/take-back`}
    body={() => ({})}
    success="It is taken back."
    variant="text"
  />
);
