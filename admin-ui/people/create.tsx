import { FormGrid } from '../forms/form-grid.tsx';
import { CreatePage } from '../forms/record-form.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { RolesInput } from './roles-input.tsx';

export const PersonCreate = () => (
  <CreatePage title="Add a person">
    <FormGrid>
      <WordsInput source="name" label="Name" longest={120} required />
      <WordsInput source="sayAs" label="Say it as" longest={120} />
      <WordsInput source="email" label="E-mail to sign in with" longest={254} type="email" required autoComplete="off" />
      <WordsInput source="password" label="First password" longest={200} type="password" required autoComplete="new-password" helperText="15 letters or more. Ask the person to change it after the first sign-in." />
    </FormGrid>
    <RolesInput />
  </CreatePage>
);
