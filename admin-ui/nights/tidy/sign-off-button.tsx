import { CommandButton } from '../../forms/command-button.tsx';
import { today } from '../../format/day.ts';
import { ChoiceInput } from '../../inputs/choice-input.tsx';
import { CountInput } from '../../inputs/count-input.tsx';
import { WordsInput } from '../../inputs/words-input.tsx';
import type { Night } from '../types.ts';

const BOOK = [{ id: 'agrees', name: 'It agrees' }, { id: 'differs', name: 'It differs' }];

/** The same sign-off as at the table, for the office; what is open holds nothing up. */
export function SignOffButton({ night }: { night: Night }) {
  const isEarly = today() < night.heldOn;
  return (
    <CommandButton
      label="Sign off the night"
      title={`Sign off ${night.title}?`}
      explains="The reads that count move from owed to given, and the money for them is earned. This is done once a night; what is settled later is an amendment."
      path={`/nights/${night.id}/sign-off`}
      body={({ note, overrideReason, attendance, book, bookWords }) => ({
        ...(note ? { note } : {}), ...(overrideReason ? { overrideReason } : {}), ...(typeof attendance === 'number' ? { attendance } : {}),
        ...(book ? { bookAgrees: book === 'agrees' } : {}), ...(book === 'differs' && bookWords ? { bookWords } : {}),
      })}
      success="The night is signed off."
      variant="contained"
    >
      {isEarly && <WordsInput source="overrideReason" label="Why before its day" longest={300} required helperText="The night’s day has not come yet; only a director may close it now." />}
      <CountInput source="attendance" label="Attendance" max={200_000} helperText="Where somebody counted" />
      <ChoiceInput source="book" label="The sheet and the official scorer’s book" choices={BOOK} />
      <WordsInput source="bookWords" label="What differs" longest={300} helperText="Only where the book differs" />
      <WordsInput source="note" label="Note" longest={1000} lines={2} helperText="Anything the office should know" />
    </CommandButton>
  );
}
