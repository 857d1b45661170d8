import { Alert, Box, Button, Paper, Typography } from '@mui/material';
import { useState } from 'react';
import { Form, ResourceContextProvider, Title } from 'react-admin';
import { useWatch } from 'react-hook-form';
import { useNavigate, useParams } from 'react-router';
import { nextSeasonDays, nextSeasonName } from '../../../server/domain/sponsorship/rollover/moved-days.ts';
import { useSend } from '../../api/command.ts';
import { useServer } from '../../api/use-server.ts';
import { Go } from '../../fields/go.tsx';
import { FormError } from '../../forms/form-error.tsx';
import { FormGrid } from '../../forms/form-grid.tsx';
import { today } from '../../format/day.ts';
import { DayInput } from '../../inputs/day-input.tsx';
import { DecimalInput } from '../../inputs/decimal-input.tsx';
import { WordsInput } from '../../inputs/words-input.tsx';
import { NoAccess } from '../../layout/no-access.tsx';
import { usePreview } from '../../api/use-preview.ts';
import { iMay } from '../../session/rights.ts';
import { Reading } from '../../show/reading.tsx';
import type { Season } from '../types.ts';
import { PreviewSheet } from './preview-sheet.tsx';
import type { ContractChoice, RollOverView } from './types.ts';

type Choices = Readonly<Record<string, ContractChoice>>;

function bodyOf(values: Record<string, unknown>, choices: Choices): Record<string, unknown> | null {
  const { name, startsOn, endsOn, increasePercent, signedOn } = values;
  if (!name || !startsOn || !endsOn || !signedOn) return null;
  return {
    name, startsOn, endsOn, signedOn,
    increaseBasisPoints: Math.round(Number(increasePercent ?? 0) * 100),
    choices: Object.entries(choices).map(([contractId, choice]) => ({ contractId, choice })),
  };
}

function FormAndPreview({ season, choices, setChoices, sending }: { season: Season; choices: Choices; setChoices: (choices: Choices) => void; sending: boolean }) {
  const body = bodyOf(useWatch() as Record<string, unknown>, choices);
  const asked = usePreview<RollOverView>(`/seasons/${season.id}/roll-over-previews`, body);
  const mayRollOver = body !== null && asked.isSettled && asked.data !== undefined && asked.error === null;
  return (
    <>
      <Paper variant="outlined" sx={{ p: { xs: 1.5, sm: 2.5 }, mb: 2 }}>
        <Typography sx={{ mb: 1.5, maxWidth: '70ch' }}>
          The next season is made from {season.name}: its teams, prices and packages anew, agreed years carried on, the other contracts renewed as drafts. Look at what will be made below; nothing is made until you say so.
        </Typography>
        <FormGrid columns={3}>
          <WordsInput source="name" label="Name" longest={80} required />
          <DayInput source="startsOn" label="First day" required />
          <DayInput source="endsOn" label="Last day" required />
          <DecimalInput source="increasePercent" label="Prices higher by, percent" max={100} helperText="Rate card and packages, to the cent; agreed years keep their own increase" />
          <DayInput source="signedOn" label="Agreed years are signed on" required />
        </FormGrid>
        <FormError />
        <Button type="submit" variant="contained" disabled={sending || !mayRollOver} sx={{ mt: 1 }}>{sending ? 'Working…' : 'Roll the season over'}</Button>
      </Paper>
      {body === null
        ? <Alert severity="info" icon={false}>Fill in the name and the days to see what will be made.</Alert>
        : <Reading of={asked}>{(seen) => <PreviewSheet seen={seen} onChoice={(contractId, choice) => setChoices({ ...choices, [contractId]: choice })} />}</Reading>}
    </>
  );
}

function RollOverForm({ season }: { season: Season }) {
  const { send, sending } = useSend();
  const navigate = useNavigate();
  const [choices, setChoices] = useState<Choices>({});
  const submit = async (values: object) => {
    const body = bodyOf(values as Record<string, unknown>, choices);
    const { answer, errors } = await send<RollOverView>(`/seasons/${season.id}/roll-over`, { method: 'POST', body }, 'The next season is made.');
    if (errors) return errors;
    navigate(`/seasons/${answer!.seasonId}/show`);
    return undefined;
  };
  return (
    <Form onSubmit={submit} record={{}} defaultValues={{ name: nextSeasonName(season.name), ...nextSeasonDays(season), increasePercent: 0, signedOn: today() }}>
      <FormAndPreview season={season} choices={choices} setChoices={setChoices} sending={sending} />
    </Form>
  );
}

/** Makes the next season of one: the form, and beneath it what would be made. */
export function RollOverPage() {
  const { id = '' } = useParams();
  const may = iMay('season-roll-over', 'edit');
  const asked = useServer<Season>(may ? `/seasons/${id}` : null);
  if (!may) return <NoAccess />;
  return (
    <Reading of={asked}>
      {(season) => (
        <ResourceContextProvider value="seasons">
          <Title title={`Roll over ${season.name}`} />
          <Box component="nav" aria-label="Way back" sx={{ mb: 1 }}>
            <span aria-hidden="true">← </span>
            <Go resource="seasons" id={season.id}>{season.name}</Go>
          </Box>
          {season.followedBySeasonId
            ? <Alert severity="info" icon={false}>This season was rolled over already. <Go resource="seasons" id={season.followedBySeasonId}>Look at the next season</Go></Alert>
            : <RollOverForm season={season} />}
        </ResourceContextProvider>
      )}
    </Reading>
  );
}
