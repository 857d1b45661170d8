import { Alert } from '@mui/material';
import { dayText, monthText } from '../format/day.ts';
import { instantText } from '../format/instant.ts';
import { iMay } from '../session/rights.ts';
import { Facts } from '../show/facts.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import { count } from '../words/count.ts';
import { Cautions } from './cautions.tsx';
import { CloseButton } from './close-button.tsx';
import { LateNights } from './late-nights.tsx';
import { MonthState } from './state.tsx';
import type { MonthPage } from './types.ts';

function whatNext(month: MonthPage): string | null {
  if (month.state === 'running' || month.state === 'ahead') return `It can be closed from ${dayText(month.closesFrom)} on.`;
  if (month.state === 'closed' || (month.isNext && iMay('months', 'edit'))) return null;
  return month.isNext ? 'A bookkeeper closes it.' : 'The months before it have to be closed first.';
}

export const MonthShow = () => (
  <ShowPage<MonthPage> title={(month) => monthText(month.id)} canEdit={false} actions={(month) => month.isNext && iMay('months', 'edit') && <CloseButton month={month} />}>
    {(month) => (
      <>
        {whatNext(month) && <Alert severity="info" sx={{ mb: 2 }}>{whatNext(month)}</Alert>}
        <Section title="The month">
          <Facts
            facts={[
              ['State', <MonthState key="state" month={month} />],
              ['Booked', count(month.events, 'event')],
              month.closedAt ? ['Closed', [instantText(month.closedAt), month.closedByName].filter(Boolean).join(', by ')] : null,
            ]}
          />
        </Section>
        {month.cautions && <LateNights month={month} />}
        {month.cautions && <Cautions month={month} />}
      </>
    )}
  </ShowPage>
);
