import { maxLength, TextInput, required as isNeeded } from 'react-admin';

interface Props {
  source: string;
  label: string;
  longest?: number;
  lines?: number;
  type?: string;
  defaultValue?: string;
  helperText?: string;
  required?: boolean;
  autoComplete?: string;
}

/** Words a person types; `lines` above one makes it a larger box. */
export function WordsInput({ longest = 200, lines = 1, required, helperText, ...props }: Props) {
  return (
    <TextInput
      {...props}
      {...(lines > 1 ? { multiline: true, minRows: lines } : {})}
      validate={[maxLength(longest), ...(required ? [isNeeded()] : [])]}
      helperText={helperText ?? false}
    />
  );
}
