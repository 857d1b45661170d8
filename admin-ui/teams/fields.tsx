import { FormGrid } from '../forms/form-grid.tsx';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { PickInput } from '../inputs/pick-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { LEVELS } from '../words/choices.ts';

export function TeamFields() {
  return (
    <FormGrid>
      <PickInput source="seasonId" reference="seasons" label="Season" required />
      <PickInput source="schoolId" reference="schools" label="School" required />
      <WordsInput source="name" label="Team" longest={80} required helperText="Varsity, JV, Girls varsity …" />
      <ChoiceInput source="level" label="Level" choices={LEVELS} defaultValue="varsity" required />
      <WordsInput source="headCoach" label="Head coach" longest={120} />
      <WordsInput source="headCoachSayAs" label="Say the coach’s name as" longest={120} />
    </FormGrid>
  );
}
