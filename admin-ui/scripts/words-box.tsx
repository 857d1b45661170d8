import { TextField } from '@mui/material';
import type { RefObject } from 'react';
import { maxLength, required, useInput } from 'react-admin';

export type Box = HTMLTextAreaElement;

interface Props {
  source: string;
  label: string;
  box: RefObject<Box | null>;
  onFocus: () => void;
  language: string;
  isRequired?: boolean;
  helperText?: string;
}

/** The words of a script, in a box that others can put a variable or a direction into. */
export function WordsBox({ source, label, box, onFocus, language, isRequired = false, helperText }: Props) {
  const { id, field, fieldState } = useInput({ source, validate: [maxLength(5000), ...(isRequired ? [required()] : [])] });
  const { ref, ...input } = field;
  return (
    <TextField
      {...input}
      id={id}
      value={field.value ?? ''}
      inputRef={(element: Box | null) => { ref(element); box.current = element; }}
      onFocus={onFocus}
      label={label}
      required={isRequired}
      multiline
      minRows={8}
      fullWidth
      margin="dense"
      error={fieldState.invalid}
      helperText={fieldState.error?.message?.replace(/^@@react-admin@@"?|"?$/g, '') ?? helperText}
      slotProps={{ htmlInput: { lang: language, spellCheck: true }, inputLabel: { shrink: true } }}
      sx={{ '& textarea': { fontFamily: 'ui-monospace, monospace', fontSize: '0.95rem', lineHeight: 1.5 } }}
    />
  );
}

/** Puts text where the cursor stands and tells the form; the browser's own undo still takes it back. */
export function insertInto(box: Box | null, text: string): void {
  if (!box) return;
  box.focus();
  if (document.execCommand?.('insertText', false, text)) return;
  box.setRangeText(text, box.selectionStart, box.selectionEnd, 'end');
  box.dispatchEvent(new Event('input', { bubbles: true }));
}

/** Takes the cursor to a line, from 1. */
export function goToLine(box: Box | null, line: number): void {
  if (!box) return;
  const lines = box.value.split('\n');
  const start = lines.slice(0, line - 1).reduce((sum, one) => sum + one.length + 1, 0);
  box.focus();
  box.setSelectionRange(start, start + (lines[line - 1]?.length ?? 0));
}
