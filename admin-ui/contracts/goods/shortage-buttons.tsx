import { mayUse } from '../../../server/domain/access/rights.ts';
import { CommandButton } from '../../forms/command-button.tsx';
import { today } from '../../format/day.ts';
import { moneyText } from '../../format/money.ts';
import { DayInput } from '../../inputs/day-input.tsx';
import { knownMe } from '../../session/me.ts';
import type { Goods } from './types.ts';

/** At the end: what did not come is billed, or let go by who may sign a contract. */
export function ShortageButtons({ goods }: { goods: Goods }) {
  const amount = moneyText(goods.openCents);
  const path = `/contracts/${goods.contractId}/goods-shortage`;
  return (
    <>
      <CommandButton
        label="Bill what is missing"
        title={`Bill ${amount} for what did not come?`}
        explains={`An invoice of ${amount} is issued, with tax where it is charged. No more goods are taken in for it after that.`}
        path={path}
        defaults={{ settledOn: today() }}
        body={({ settledOn }) => ({ settles: 'billed', settledOn })}
        success="The invoice is issued."
      >
        <DayInput source="settledOn" label="Day of the invoice" required />
      </CommandButton>
      {mayUse(knownMe()?.roles ?? [], 'sign contracts') && (
        <CommandButton
          label="Let it go"
          title={`Let ${amount} go?`}
          explains="The sponsor owes nothing more. The reads still owed are worth less from now on; what was read for more than came in becomes an allowance. Consult the business office."
          path={path}
          defaults={{ settledOn: today() }}
          body={({ settledOn }) => ({ settles: 'allowed', settledOn })}
          success="It is let go."
        >
          <DayInput source="settledOn" label="On" required />
        </CommandButton>
      )}
    </>
  );
}
