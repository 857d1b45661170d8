import { Box, Typography } from '@mui/material';
import { CommandButton } from '../forms/command-button.tsx';
import { FormGrid } from '../forms/form-grid.tsx';
import { only } from '../api/changes.ts';
import { today } from '../format/day.ts';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { DayInput } from '../inputs/day-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { CONTACT_WAYS } from '../words/choices.ts';

interface Props {
  sponsor: { id: string; name: string; contactName: string | null };
  label?: string;
}

/** What was said, and what comes next: half a minute after hanging up. */
export const ContactButton = ({ sponsor, label = 'Write down the call' }: Props) => (
  <CommandButton
    label={label}
    title={`What was said to ${sponsor.name}`}
    explains="It stays in the history. The next step takes the place of the one that was due; leave it empty when nothing comes next."
    path={`/sponsors/${sponsor.id}/contacts`}
    body={(values) => only(values, 'contactedOn', 'how', 'withWhom', 'what', 'nextStep', 'nextStepOn')}
    defaults={{ contactedOn: today(), how: 'call', withWhom: sponsor.contactName ?? '' }}
    confirmLabel="Write it down"
    success="It is written down."
    variant="contained"
  >
    <FormGrid columns={3}>
      <DayInput source="contactedOn" label="When" required />
      <ChoiceInput source="how" label="How" choices={CONTACT_WAYS} required />
      <WordsInput source="withWhom" label="With whom" longest={120} />
    </FormGrid>
    <WordsInput source="what" label="What was said" longest={2000} lines={3} required />
    <Box sx={{ mt: 1 }}>
      <Typography variant="h3" component="h3">What comes next</Typography>
      <FormGrid>
        <WordsInput source="nextStep" label="Next step" longest={400} />
        <DayInput source="nextStepOn" label="On" />
      </FormGrid>
    </Box>
  </CommandButton>
);
