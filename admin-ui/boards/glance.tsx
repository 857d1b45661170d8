import { Box, Typography } from '@mui/material';
import { Title } from 'react-admin';
import { useServer } from '../api/use-server.ts';
import { DownloadButtons } from '../books/download-buttons.tsx';
import { useAsked } from '../books/use-asked.ts';
import { chartFiles } from '../charts/chart-with-table.tsx';
import { Go } from '../fields/go.tsx';
import { Tag } from '../fields/tag.tsx';
import { dayText } from '../format/day.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { Figures } from '../show/figures.tsx';
import { Reading } from '../show/reading.tsx';
import { Section } from '../show/section.tsx';
import { count, numberText } from '../words/count.ts';
import { Signs } from './glance-cell.tsx';
import { GlanceGrid } from './glance-grid.tsx';
import { GLANCE_WORDS, ROWS } from './glance-words.ts';
import { SeasonPick } from './season-pick.tsx';
import type { GlanceView, ToMend } from './types.ts';

/** What to do first: the worst, by night. */
function First({ view: { next, nextLeftOff } }: { view: GlanceView }) {
  if (next.length === 0) return <EmptyList>Nothing has to be seen to in the next two weeks, and every night that is over is signed off.</EmptyList>;
  return (
    <>
      <Rows<ToMend>
        label="What to do first"
        rows={next}
        keyOf={(one) => `${one.nightId} ${one.row}`}
        columns={[
          { label: 'Night', show: (one) => <>{dayText(one.heldOn, 'weekday')}, {one.label}</> },
          { label: 'What', show: (one) => <Tag mood={one.state === 'mend' ? 'bad' : 'care'}>{GLANCE_WORDS[one.row]}</Tag> },
          { label: 'What is wrong', show: (one) => one.sentence },
          { label: 'Where', show: (one) => <Go to={one.to}>Mend it</Go> },
        ]}
      />
      {nextLeftOff > 0 && <Typography sx={{ mt: 1, color: 'text.secondary' }}>And {count(nextLeftOff, 'more thing')}, marked in the grid below.</Typography>}
    </>
  );
}

function openFigures({ open, nights }: GlanceView) {
  const rows = ROWS.filter((row) => open[row].mend + open[row].look > 0);
  return [
    { label: 'Nights', value: numberText(nights.length), note: `${numberText(nights.filter(({ isSignedOff }) => isSignedOff).length)} signed off` },
    ...rows.map((row) => ({ label: GLANCE_WORDS[row], value: numberText(open[row].mend + open[row].look), note: open[row].mend > 0 ? `${count(open[row].mend, 'night')} to see to` : 'worth a look' })),
  ];
}

function Shown({ view }: { view: GlanceView }) {
  if (view.seasonId === null) return <EmptyList action={<Go to="/seasons/create">Add a season</Go>}>There is no season yet.</EmptyList>;
  if (view.nights.length === 0) return <EmptyList action={<Go to="/games/create">Add a game</Go>}>{view.seasonName} has no announced home game yet, so no night needs anything.</EmptyList>;
  return (
    <>
      <Section title="What is open"><Figures figures={openFigures(view)} /></Section>
      <Section title="What to do first"><First view={view} /></Section>
      <Section title="Night by night" lead="What is missing begins to press two weeks before its night. Of a night that is over only its sign-off and how many came are still asked for.">
        <Signs />
        <GlanceGrid nights={view.nights} />
      </Section>
    </>
  );
}

/** Nights against what each has to have: in ten seconds who is behind, and what to do. */
export function GlancePage() {
  const { asked, query, change } = useAsked(['seasonId']);
  const view = useServer<GlanceView>(`/boards/glance${query && `?${query}`}`);
  return (
    <>
      <Title title="Season at a glance" />
      <Box sx={{ display: 'flex', gap: 1.5, flexWrap: 'wrap', alignItems: 'center', mb: 2 }}>
        <SeasonPick value={asked.seasonId ?? view.data?.seasonId} onChange={(id) => change('seasonId', id)} />
        <Box sx={{ display: 'flex', gap: 1, flexWrap: 'wrap', ml: { md: 'auto' } }}>{view.data && view.data.nights.length > 0 && <DownloadButtons papers={chartFiles('/boards/glance', query, 'season-at-a-glance')} />}</Box>
      </Box>
      <Reading of={view}>{(data) => <Shown view={data} />}</Reading>
    </>
  );
}
