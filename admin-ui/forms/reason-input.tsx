import { WordsInput } from '../inputs/words-input.tsx';

export function ReasonInput({ helperText }: { helperText?: string }) {
  return <WordsInput source="reason" label="Why" longest={300} lines={2} required helperText={helperText ?? 'Kept with the record, for whoever asks in spring.'} />;
}
