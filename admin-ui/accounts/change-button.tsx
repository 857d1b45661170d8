import { CommandButton } from '../forms/command-button.tsx';
import { FormGrid } from '../forms/form-grid.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import type { Account } from './types.ts';

export const ChangeButton = ({ account }: { account: Account }) => (
  <CommandButton
    label="Change"
    title={`Account ${account.code}`}
    explains="The name stands in reports from now on. The outside code is what your district’s books call this account; the journal leaves with it. What was exported before stays as it was."
    path={`/accounts/${account.code}`}
    method="PUT"
    version={account.version}
    defaults={{ name: account.name, outsideCode: account.outsideCode ?? '' }}
    body={({ name, outsideCode }) => ({ name, outsideCode: outsideCode || null })}
    confirmLabel="Save"
    success="The account is saved."
    variant="text"
  >
    <FormGrid>
      <WordsInput source="name" label="Name" longest={80} required />
      <WordsInput source="outsideCode" label="Outside code" longest={60} />
    </FormGrid>
  </CommandButton>
);
