import { maxValue, minValue, NumberInput, required as isNeeded } from 'react-admin';

interface Props {
  source: string;
  label: string;
  min?: number;
  max?: number;
  defaultValue?: number;
  helperText?: string;
  required?: boolean;
}

/** A whole number of things. */
export function CountInput({ min = 0, max = 100_000, required, helperText, ...props }: Props) {
  return (
    <NumberInput
      {...props}
      step={1}
      min={min}
      max={max}
      validate={[minValue(min), maxValue(max), ...(required ? [isNeeded()] : [])]}
      helperText={helperText ?? false}
    />
  );
}
