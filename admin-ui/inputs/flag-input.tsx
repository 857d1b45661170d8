import { BooleanInput } from 'react-admin';

export function FlagInput(props: { source: string; label: string; defaultValue?: boolean; helperText?: string }) {
  return <BooleanInput {...props} helperText={props.helperText ?? false} />;
}
