import { TextInput, required as isNeeded } from 'react-admin';
import { clockTyped, instantOn } from '../format/instant.ts';

interface Props {
  source: string;
  label: string;
  helperText?: string;
  required?: boolean;
  /** Where the field is kept as an instant: the day whose clock is typed. */
  onDay?: string;
}

/** An hour on the department's clock. */
export function ClockInput({ required, helperText, onDay, ...props }: Props) {
  return (
    <TextInput
      {...props}
      type="time"
      validate={required ? [isNeeded()] : []}
      helperText={helperText ?? false}
      slotProps={{ inputLabel: { shrink: true } }}
      {...(onDay
        ? { format: (at: string | null) => clockTyped(at), parse: (typed: string) => (typed ? instantOn(onDay, typed) : null) }
        : {})}
    />
  );
}
