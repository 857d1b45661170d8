import { maxValue, minValue, NumberInput } from 'react-admin';

interface Props {
  source: string;
  label: string;
  min?: number;
  max: number;
  helperText?: string;
}

/** A number with up to two decimals, such as a percentage. */
export const DecimalInput = ({ min = 0, max, helperText, ...props }: Props) => (
  <NumberInput {...props} step={0.01} min={min} max={max} validate={[minValue(min), maxValue(max)]} helperText={helperText ?? false} />
);
