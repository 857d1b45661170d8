import { InputAdornment, TextField, type TextFieldProps } from '@mui/material';

/** Dollars as they are typed; read by `centsTyped`. */
export function AmountBox(props: TextFieldProps) {
  return (
    <TextField
      {...props}
      slotProps={{
        htmlInput: { inputMode: 'decimal', autoComplete: 'off', className: 'tabular' },
        input: { startAdornment: <InputAdornment position="start">$</InputAdornment> },
      }}
    />
  );
}
