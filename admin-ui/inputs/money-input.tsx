import { InputAdornment, TextField } from '@mui/material';
import { useState } from 'react';
import { useInput, type Validator } from 'react-admin';
import { centsTyped, typedMoney } from '../format/money.ts';

interface Props {
  source: string;
  label: string;
  helperText?: string;
  defaultValue?: number;
  validate?: Validator | Validator[];
  required?: boolean;
}

const isAmount: Validator = (value: unknown) =>
  typeof value === 'string' && value !== '' ? 'Write an amount such as 1,250.00.' : undefined;
const isThere: Validator = (value: unknown) => (value === null || value === undefined || value === '' ? 'This is needed.' : undefined);

/** Dollars are typed, cents are kept; what is no amount stays as typed, with a sentence under it. */
export function MoneyInput({ source, label, helperText, defaultValue, validate, required }: Props) {
  const rules = [isAmount, ...(required ? [isThere] : []), ...(Array.isArray(validate) ? validate : validate ? [validate] : [])];
  const { id, field, fieldState, formState } = useInput({ source, defaultValue, validate: rules, isRequired: required });
  const [typed, setTyped] = useState<string | null>(null);
  const shown = typed ?? (typeof field.value === 'number' ? typedMoney(field.value) : (field.value ?? ''));
  const failed = fieldState.error !== undefined && (fieldState.isTouched || formState.isSubmitted);
  const message = fieldState.error?.message?.replace('@@react-admin@@', '').replace(/^"|"$/g, '');
  return (
    <TextField
      id={id}
      label={label}
      value={shown}
      required={required ?? false}
      error={failed}
      helperText={failed ? message : helperText}
      margin="dense"
      onChange={(event) => {
        setTyped(event.target.value);
        field.onChange(event.target.value.trim() === '' ? null : (centsTyped(event.target.value) ?? event.target.value));
      }}
      onBlur={() => {
        setTyped(null);
        field.onBlur();
      }}
      slotProps={{
        htmlInput: { inputMode: 'decimal', autoComplete: 'off', className: 'tabular' },
        input: { startAdornment: <InputAdornment position="start">$</InputAdornment> },
      }}
    />
  );
}
