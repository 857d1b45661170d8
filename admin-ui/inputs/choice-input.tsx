import { SelectInput, required as isNeeded } from 'react-admin';

interface Props {
  source: string;
  label: string;
  choices: readonly { id: string | number; name: string }[];
  defaultValue?: string | number;
  helperText?: string;
  required?: boolean;
}

/** One of a few named choices. */
export function ChoiceInput({ choices, required, helperText, ...props }: Props) {
  return (
    <SelectInput {...props} choices={[...choices]} validate={required ? [isNeeded()] : []} helperText={helperText ?? false} {...(required ? {} : { emptyText: '–' })} />
  );
}
