import { regex, required, TextInput } from 'react-admin';

const validate = [required(), regex(/^#[0-9A-Fa-f]{6}$/, 'Choose a color.')];

export function ColourInput({ source, label, defaultValue }: { source: string; label: string; defaultValue: string }) {
  return <TextInput source={source} label={label} type="color" defaultValue={defaultValue} validate={validate} helperText={false} sx={{ '& input': { height: 32, p: 1.5 } }} />;
}
