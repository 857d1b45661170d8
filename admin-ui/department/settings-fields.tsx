import { Alert } from '@mui/material';
import { useWatch } from 'react-hook-form';
import { FormPart } from '../forms/form-grid.tsx';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { FlagInput } from '../inputs/flag-input.tsx';
import { AnnouncingCautions } from './announcing-cautions.tsx';
import { PrayerCaution } from './prayer-caution.tsx';

const MENTIONS = [
  { id: 'nextWindow', name: 'In the next time-out or break' },
  { id: 'deadBall', name: 'At the next dead ball, four seconds or less' },
  { id: 'atOnce', name: 'At the basket' },
];

export function SettingsFields() {
  const [foulCounts, mention] = useWatch({ name: ['settings.foulCountsRead', 'settings.bankShotMention'] }) as [boolean, string];
  const departs = foulCounts || mention === 'atOnce';
  return (
    <FormPart title="What your department decides" why="The defaults follow the published guidance for announcers.">
      <FlagInput source="settings.prayerOn" label="Scripts may hold an opening prayer" />
      <PrayerCaution />
      <FlagInput source="settings.foulCountsRead" label="Foul counts are read aloud" helperText="Off: they are printed for the table and marked “do not read”." />
      <ChoiceInput source="settings.bankShotMention" label="A bank-shot mention is read" choices={MENTIONS} required />
      <Alert severity={departs ? 'warning' : 'info'} icon={false} sx={{ my: 1 }}>
        {departs ? 'Your choice departs from the published guidance, which says:' : 'The published guidance for announcers says:'}
        <AnnouncingCautions />
      </Alert>
      <FlagInput source="settings.cutShortCounts" label="A read cut short usually counts" helperText="Where the sponsor’s name and main line were voiced. Each one can be decided at sign-off." />
    </FormPart>
  );
}
