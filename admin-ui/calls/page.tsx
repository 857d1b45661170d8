import { Box, Button, Typography } from '@mui/material';
import { Title } from 'react-admin';
import { addDays, type Day } from '../../server/domain/day.ts';
import { useServer } from '../api/use-server.ts';
import { Pick } from '../books/pickers.tsx';
import { useAsked } from '../books/use-asked.ts';
import { dayText } from '../format/day.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { knownMe } from '../session/me.ts';
import { Reading } from '../show/reading.tsx';
import { Section } from '../show/section.tsx';
import { CallRows } from './call-rows.tsx';
import type { CallsView, CallView } from './types.ts';

const MINE = 'mine';
const NOBODYS = 'nobodys';

function queryOf({ weekOf, whose }: Record<string, string | undefined>): string {
  const search = new URLSearchParams();
  if (weekOf) search.set('weekOf', weekOf);
  if (whose === NOBODYS) search.set('isNobodys', 'true');
  else if (whose) search.set('callerPersonId', whose === MINE ? (knownMe()?.person.id ?? '') : whose);
  return search.toString();
}

interface Part {
  title: string;
  lead?: string;
  calls: CallView[];
}

function partsOf({ calls, today }: CallsView): Part[] {
  const of = (group: CallView['group']) => calls.filter((call) => call.group === group);
  const days = [...new Set(of('thisWeek').map((call) => call.on!))];
  return [
    { title: 'Overdue', calls: of('overdue') },
    ...days.map((day) => ({ title: day === today ? `Today, ${dayText(day, 'long')}` : dayText(day, 'long'), calls: of('thisWeek').filter((call) => call.on === day) })),
    { title: 'No day named', lead: 'A next step that nobody gave a day to. Call, or give it one.', calls: of('noDay') },
    { title: 'Ends this season, nothing for the next one', lead: 'No contract that goes on and no offer behind it yet. The soonest end stands first.', calls: of('ending') },
  ].filter((part) => part.calls.length > 0);
}

/** Whom to call in a week, and what was said last. */
export function CallsPage() {
  const { asked, change } = useAsked(['weekOf', 'whose']);
  const answer = useServer<CallsView>(`/calls?${queryOf(asked)}`);
  const view = answer.data;
  const me = knownMe()?.person.id;
  const move = (days: number) => view && change('weekOf', addDays(view.from as Day, days));
  const others = (view?.callers ?? []).filter((one) => one.personId !== me).map(({ personId, name }) => ({ id: personId, name }));
  return (
    <>
      <Title title="Who to call" />
      <Box sx={{ display: 'flex', gap: 1.5, flexWrap: 'wrap', alignItems: 'center', mb: 2 }}>
        <Pick label="Whose calls" value={asked['whose'] ?? 'all'} choices={[{ id: 'all', name: 'Everybody’s' }, { id: MINE, name: 'Mine' }, ...others, { id: NOBODYS, name: 'Nobody’s yet' }]} onChange={(whose) => change('whose', whose === 'all' ? '' : whose)} />
        <Button variant="outlined" onClick={() => move(-7)}>The week before</Button>
        <Button variant="outlined" onClick={() => move(7)}>The week after</Button>
        {asked['weekOf'] && <Button onClick={() => change('weekOf', '')}>This week</Button>}
        {view && <Typography component="p">Monday, {dayText(view.from)} through Sunday, {dayText(view.through)}</Typography>}
      </Box>
      <Reading of={answer}>
        {(calls) =>
          calls.calls.length === 0 ? (
            <EmptyList>Nobody to call in this week. A sponsor stands here when its next step is due, when an offer to it lapses soon, or when its contract ends with nothing behind it.</EmptyList>
          ) : (
            <>
              {partsOf(calls).map((part) => (
                <Section key={part.title} title={part.title} lead={part.lead}>
                  <CallRows label={part.title} calls={part.calls} today={calls.today} />
                </Section>
              ))}
            </>
          )
        }
      </Reading>
    </>
  );
}
