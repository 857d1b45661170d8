import { FlagInput } from '../inputs/flag-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';

export function CategoryFields() {
  return (
    <>
      <WordsInput source="name" label="Name" longest={80} required />
      <FlagInput source="isBlocked" label="The department does not take these sponsors" defaultValue={false} helperText="A contract of such a sponsor needs a written exception with the name of who approved it." />
      <FlagInput source="isFood" label="They sell food or drink" defaultValue={false} helperText="Their words are cautioned where they would be read inside the school day: only what may be sold on campus then may be named (7 CFR 210.31(c)(3)(iii))." />
    </>
  );
}
