import { CommandButton } from '../forms/command-button.tsx';
import { monthText } from '../format/day.ts';
import { FlagInput } from '../inputs/flag-input.tsx';
import { count } from '../words/count.ts';
import type { MonthPage } from './types.ts';

export function CloseButton({ month }: { month: MonthPage }) {
  const name = monthText(month.id);
  const late = month.lateNightCount;
  return (
    <CommandButton
      label={`Close ${name}`}
      title={`Close ${name} for good?`}
      explains={`Nothing more is booked into ${name}. What comes in for it later is booked on the first open day and keeps its own day. A closed month is never opened again.`}
      path={`/months/${month.id}/close`}
      defaults={{ acknowledgesNights: false }}
      body={(values) => ({ acknowledgesNights: values['acknowledgesNights'] === true })}
      success={`${name} is closed.`}
    >
      {late > 0 && <FlagInput source="acknowledgesNights" label={`I looked at the ${count(late, 'night')} not signed off; what they count goes into the month after`} />}
    </CommandButton>
  );
}
