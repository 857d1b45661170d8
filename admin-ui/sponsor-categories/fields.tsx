import { FlagInput } from '../inputs/flag-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';

export function CategoryFields() {
  return (
    <>
      <WordsInput source="name" label="Name" longest={80} required />
      <FlagInput source="isBlocked" label="The department does not take these sponsors" defaultValue={false} helperText="A contract of such a sponsor needs a written exception with the name of who approved it." />
    </>
  );
}
