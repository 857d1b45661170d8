import { SelectArrayInput } from 'react-admin';
import { useWatch } from 'react-hook-form';
import { count } from '../words/count.ts';

const USUAL = [1, 3, 7, 10, 14, 21, 30, 45, 60, 75, 90, 120];

/** The days after the due day on which a reminder goes out. */
export function ReminderDaysInput() {
  const chosen = (useWatch({ name: 'settings.reminderDays' }) ?? []) as number[];
  const days = [...new Set([...USUAL, ...chosen])].sort((one, other) => one - other);
  return (
    <SelectArrayInput
      source="settings.reminderDays"
      label="Reminders go out"
      choices={days.map((id) => ({ id, name: `${count(id, 'day')} after the due day` }))}
      helperText="At most six, each once, by e-mail to the payer with a copy of the invoice. None chosen: no reminder goes out by itself."
    />
  );
}
