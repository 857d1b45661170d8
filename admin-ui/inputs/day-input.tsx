import { DateInput, required as isNeeded } from 'react-admin';

/** A day without an hour. */
export function DayInput({ required, helperText, ...props }: { source: string; label: string; defaultValue?: string; helperText?: string; required?: boolean }) {
  return <DateInput {...props} size="medium" margin="dense" validate={required ? [isNeeded()] : []} helperText={helperText ?? false} />;
}
