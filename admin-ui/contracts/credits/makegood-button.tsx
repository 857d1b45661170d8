import { CommandButton } from '../../forms/command-button.tsx';
import { FormGrid } from '../../forms/form-grid.tsx';
import { today } from '../../format/day.ts';
import { CountInput } from '../../inputs/count-input.tsx';
import { DayInput } from '../../inputs/day-input.tsx';
import { PickInput } from '../../inputs/pick-input.tsx';
import { WordsInput } from '../../inputs/words-input.tsx';
import type { Contract } from '../types.ts';
import { ReadsFields } from './reads-fields.tsx';

/** Other reads, given later, for those that were missed. */
export const MakegoodButton = ({ contract }: { contract: Contract }) => (
  <CommandButton
    label="Agree a makegood"
    title="Agree a makegood with the sponsor"
    explains="The missed reads stay owed until their replacements are read. Place the replacements on a night under “Planned reads”; no money moves before they are given."
    path={`/contracts/${contract.id}/makegoods`}
    defaults={{ missed: 1, replacements: 1, agreedOn: today() }}
    body={({ commitmentId, gameId, missed, replacementReadKindId, replacements, agreedOn, agreedWith }) => ({
      commitmentId, gameId: gameId || null, missed, replacementReadKindId, replacements, agreedOn, agreedWith,
    })}
    confirmLabel="Agree it"
    success="The makegood is agreed."
    wide
  >
    <ReadsFields contract={contract} count="missed" countLabel="How many were missed" anyGame />
    <PickInput source="replacementReadKindId" reference="read-kinds" label="Read instead" required />
    <FormGrid>
      <CountInput source="replacements" label="How many instead" min={1} required />
      <DayInput source="agreedOn" label="Agreed on" required />
    </FormGrid>
    <WordsInput source="agreedWith" label="Agreed with" longest={120} required helperText="Who said yes for the sponsor" />
  </CommandButton>
);
