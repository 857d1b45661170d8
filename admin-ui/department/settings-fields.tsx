import { Alert } from '@mui/material';
import { useWatch } from 'react-hook-form';
import { FormGrid, FormPart } from '../forms/form-grid.tsx';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { CountInput } from '../inputs/count-input.tsx';
import { FlagInput } from '../inputs/flag-input.tsx';
import { MoneyInput } from '../inputs/money-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { ANTHEM_FORMS, FLAG_FORMS } from '../words/choices.ts';
import { AnnouncingCautions } from './announcing-cautions.tsx';
import { PrayerCaution } from './prayer-caution.tsx';
import { ReminderDaysInput } from './reminder-days-input.tsx';
import { STATE_CHOICES } from './states.ts';

const MENTIONS = [
  { id: 'nextWindow', name: 'In the next time-out or break' },
  { id: 'deadBall', name: 'At the next dead ball, four seconds or less' },
  { id: 'atOnce', name: 'At the basket' },
];
const PAPERS = [{ id: 'letter', name: 'Letter, 8½ × 11 in' }, { id: 'a4', name: 'A4, 210 × 297 mm' }];

function Opening() {
  return (
    <FormPart title="Before the game" why="A night may say otherwise for itself, for the anthem and the flag.">
      <FormGrid>
        <ChoiceInput source="settings.anthemForm" label="The anthem is usually" choices={ANTHEM_FORMS} required />
        <ChoiceInput source="settings.flagForm" label="The flag is usually" choices={FLAG_FORMS} required />
      </FormGrid>
      <FlagInput source="settings.officialsIntroduced" label="The officials are introduced by name" />
      <FlagInput source="settings.prayerOn" label="Scripts may hold an opening prayer" helperText="Off for public schools, unless the district’s counsel has agreed." />
      <PrayerCaution />
    </FormPart>
  );
}

function Announcing() {
  const [foulCounts, mention] = useWatch({ name: ['settings.foulCountsRead', 'settings.bankShotMention'] }) as [boolean, string];
  const departs = foulCounts || mention === 'atOnce';
  return (
    <FormPart title="During the game" why="The defaults follow the published guidance for announcers.">
      <FlagInput source="settings.foulCountsRead" label="Foul counts are read aloud" helperText="Off: they are printed for the table and marked “do not read”." />
      <FormGrid>
        <ChoiceInput source="settings.bankShotMention" label="A bank-shot mention is read" choices={MENTIONS} required />
        <CountInput source="settings.timeOutsReliedOn" label="Time-outs you rely on for reads" min={0} max={20} helperText="Empty: as the sport’s profile says. The rest wait in line for the next time-out." />
      </FormGrid>
      <Alert severity={departs ? 'warning' : 'info'} icon={false} sx={{ my: 1 }}>
        {departs ? 'Your choice departs from the published guidance, which says:' : 'The published guidance for announcers says:'}
        <AnnouncingCautions />
      </Alert>
      <FlagInput source="settings.cutShortCounts" label="A read cut short usually counts" helperText="Where the sponsor’s name and main line were voiced. Each one can be decided at sign-off." />
    </FormPart>
  );
}

function Packet() {
  return (
    <FormPart title="The packet" why="An announcer who has measured their own pace reads at that; the others at this one.">
      <FormGrid>
        <CountInput source="settings.wordsPerMinute" label="Words a minute" min={60} max={240} required helperText="140 is a gym’s pace" />
        <ChoiceInput source="settings.paper" label="Paper" choices={PAPERS} required />
        <ChoiceInput source="settings.state" label="State" choices={STATE_CHOICES} helperText="Where its association plays a sport by rules of its own" />
      </FormGrid>
    </FormPart>
  );
}

function Copy() {
  return (
    <FormPart title="Sponsors’ words" why="The copy check marks words that make an advertisement of an acknowledgment and says why (26 CFR 1.513-4). It is guidance, not tax advice.">
      <FlagInput source="settings.copyCheckBlocks" label="Words the check marks are refused" helperText="Off: they are marked, and you decide." />
      <FormGrid>
        <WordsInput source="settings.schoolDayEndsAt" label="The school day ends at" type="time" required helperText="Food is not advertised on campus until half an hour later, unless it may be sold there (7 CFR 210.31(c), 210.11)" />
      </FormGrid>
    </FormPart>
  );
}

function MoneyTaken() {
  return (
    <FormPart title="Money taken in" why="One takes the money and writes the receipt, another deposits it and applies it to invoices: so a mistake or a loss is seen by a second pair of eyes.">
      <FlagInput source="settings.takerMayPost" label="Whoever took a receipt may also deposit it and apply it" helperText="Off, unless the office is one person. Local rules and the business office decide." />
    </FormPart>
  );
}

function Money() {
  return (
    <FormPart title="Money" why="Local rules and the business office decide; state law may limit what a payer is charged for a check that comes back.">
      <FormGrid>
        <MoneyInput source="settings.returnedCheckFeeCents" label="Fee for a returned check" helperText="Offered when a payment comes back; 0 for none" />
        <ReminderDaysInput />
      </FormGrid>
    </FormPart>
  );
}

/** What a department decides for itself. */
export const SettingsFields = () => (
  <>
    <Opening />
    <Announcing />
    <Packet />
    <Copy />
    <Money />
    <MoneyTaken />
  </>
);
